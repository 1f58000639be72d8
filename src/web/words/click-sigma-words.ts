import type { Settings } from "../../record/settings.ts";
import { dayInWords, today } from "../parts/days-in-words.ts";
import { countOf, numberInWords, withUnit } from "../parts/figures-in-words.ts";

type ClickSigma = Pick<Settings, "clickSigmaPx" | "clickSigmaFrom">;

/** Where the click error came from: "your own, measured on 29 Nov 2026 (120 clicks)", or that it is assumed. */
export function clickSigmaOrigin({ clickSigmaPx, clickSigmaFrom }: ClickSigma): string {
  if (clickSigmaFrom !== undefined) return measuredInWords(clickSigmaFrom);
  const px = withUnit(numberInWords(clickSigmaPx, Number.isInteger(clickSigmaPx) ? 0 : 2), "px");
  return clickSigmaPx === 1 ? `assumed ${px}, not measured yet` : `${px} written by hand, not measured`;
}

/** An error that was measured, with its day in this place and how many clicks told it. */
const measuredInWords = ({ at, n }: NonNullable<ClickSigma["clickSigmaFrom"]>): string =>
  `your own, measured on ${dayInWords(today(new Date(at)))} (${countOf(n, "click")})`;
