import { teeth } from "../core/tooth/teeth.ts";

/**
 * The teeth that a tooth is tested against: its neighbours of the same dentition, over the midline for the first, then the
 * same tooth of the other side.
 * Takes a two-digit number. Gives two-digit numbers, none twice; none for what is no tooth.
 * @source common practice: neighbours and the tooth of the same kind on the other side reply as this mouth replies
 */
export function controlTeeth(tooth: string): readonly string[] {
  const [quadrant, place] = [Number(tooth[0]), Number(tooth[1])];
  const beside = acrossOf(quadrant);
  const wanted = [
    place === 1 ? `${beside}1` : `${quadrant}${place - 1}`,
    `${quadrant}${place + 1}`,
    `${beside}${place}`,
  ];
  const known = (one: string) => teeth.some(({ twoDigit }) => twoDigit === one);
  return known(tooth) ? [...new Set(wanted.filter(known))] : [];
}

/** The quadrant on the other side of the midline: quadrants are numbered in pairs of one row. */
const acrossOf = (quadrant: number): number => (quadrant % 2 === 1 ? quadrant + 1 : quadrant - 1);

/**
 * The next tooth to test against: the first control that is not on the sheet, else the first tooth that is not.
 * Takes the tooth and the teeth that are on the sheet.
 */
export function nextControl(tooth: string, onSheet: readonly string[]): string {
  const all = [...controlTeeth(tooth), ...teeth.map(({ twoDigit }) => twoDigit)];
  return all.find((one) => one !== tooth && !onSheet.includes(one)) ?? "";
}
