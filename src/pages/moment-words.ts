import { type Part, partsOf, thePart } from "../record/parts.ts";

const dayMs = 86_400_000;
const daysInMonth = 30.4375;
/** From this many days after the filling on, a moment is counted in months from it. */
const soonDays = 60;

/**
 * When something was, in words that name no calendar date: `day 23` from the day the person came, and `12 months after
 * filling` once the canals are filled. One clock for the whole document.
 */
export function momentWords(on: string, parts: readonly Part[]): string {
  const filled = filledOn(parts);
  if (filled !== undefined && daysBetween(filled, on) >= soonDays)
    return `${Math.round(daysBetween(filled, on) / daysInMonth)} months after filling`;
  const first = thePart(parts, "case")?.body.presentedOn ?? on;
  const days = daysBetween(first, on);
  return days < 120 ? `day ${days}` : `${Math.round(days / daysInMonth)} months after presenting`;
}

/** The day of the last visit that filled a canal. */
function filledOn(parts: readonly Part[]): string | undefined {
  const filled = partsOf(parts, "visit").filter(({ body }) => body.canals.some(({ state }) => state === "filled"));
  return filled
    .map(({ body }) => body.on)
    .sort()
    .at(-1);
}

const daysBetween = (from: string, to: string): number => Math.round((Date.parse(to) - Date.parse(from)) / dayMs);
