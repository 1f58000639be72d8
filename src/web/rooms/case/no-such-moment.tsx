import type { Part } from "../../../record/parts.ts";
import { dayInWords } from "../../parts/days-in-words.ts";
import type { Moment } from "./spine/spine-moments.ts";

interface NoSuchMomentOptions {
  /** What is shown in its place. */
  readonly shown: Moment;
  /** The case is shown as it stood. */
  readonly stood: boolean;
}

/** Says that the address names a moment which the case does not have, as after it was taken out. */
export const NoSuchMoment = ({ shown, stood }: NoSuchMomentOptions) => (
  <p className="no-such-moment look" role="status">
    The moment at this address {stood ? "was not in the case then" : "is not in the case"}; shown is the latest,{" "}
    {shown.title} of {dayInWords(shown.day)}.
  </p>
);

/** Whether the address names what is shown, another part that has no page of its own, or nothing at all. */
export const isHere = (named: string, shown: Moment, parts: readonly Part[]): boolean =>
  named === "" || named === "due" || named === shown.id || parts.some(({ id }) => id === named);
