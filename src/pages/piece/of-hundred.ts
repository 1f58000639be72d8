/** A share as so many of 100, all by one measure, so that they can be held beside each other; never rounded to none or all. */
export function ofHundred(share: number): string {
  const whole = Math.round(share * 100);
  if (whole >= 100) return "almost all of 100";
  return whole <= 0 ? "almost none of 100" : `about ${whole} of 100`;
}
