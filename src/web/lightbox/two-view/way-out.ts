/** What a person can do about a course in space that is refused. */
export type WayOut = {
  readonly is:
    | "turnTrace"
    | "shiftTube"
    | "sayAngle"
    | "sayRight"
    | "sayReceptor"
    | "markScale"
    | "traceSameStretch"
    | "markLandmarks"
    | "freeLevels"
    | "chooseFilms";
  /** Index of the film that is at fault, where one is. */
  readonly film?: number;
};

const ways: readonly (readonly [RegExp, WayOut["is"]])[] = [
  [/runs? the other way|turn the trace/, "turnTrace"],
  [/within 1 degree|show the same/, "shiftTube"],
  [/has no scale|is that of the detector/, "markScale"],
  [/mesial or distal lies to the right/, "sayRight"],
  [/receptor is said/, "sayReceptor"],
  [/^levels/, "freeLevels"],
  [/no longer stands|is not traced/, "chooseFilms"],
  [/same stretch|points; at least|runs across/, "traceSameStretch"],
  [/in (one )?line|landmark/, "markLandmarks"],
  [/angle/, "sayAngle"],
];

/**
 * The way out of a refusal, read from its first line that has one; undefined where the words must do.
 * Takes the lines as the ledger has them, and what each film of the course is called in them.
 */
export function wayOutOf(refused: readonly string[], films: readonly string[]): WayOut | undefined {
  for (const line of refused) {
    const found = ways.find(([pattern]) => pattern.test(line));
    if (found === undefined) continue;
    const film = filmIn(line, films);
    return film === undefined ? { is: found[1] } : { is: found[1], film };
  }
  return undefined;
}

function filmIn(line: string, films: readonly string[]): number | undefined {
  const view = /^views\[(\d+)\]/.exec(line)?.[1];
  if (view !== undefined) return Number(view);
  const named = /on the film "([^"]*)"|the film "([^"]*)"/.exec(line);
  const at = films.indexOf(named?.[1] ?? named?.[2] ?? "");
  return at < 0 ? undefined : at;
}
