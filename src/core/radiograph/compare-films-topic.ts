import evangelidis from "../../../data/evangelidis-psarakis-2008/source.json" with { type: "json" };
import hartley from "../../../data/hartley-zisserman-2003/source.json" with { type: "json" };
import ruttimann from "../../../data/ruttimann-1986/source.json" with { type: "json" };
import { sourcesOf } from "../basis.ts";
import { type Fault, Refusal } from "../refusal.ts";
import { defineTopic } from "../topic.ts";
import { reasonsAgainst } from "./compare-films/comparability.ts";
import {
  type CompareFilmsInput,
  type CompareFilmsOutput,
  compareFilmsInput,
  compareFilmsOutput,
} from "./compare-films/compare-films-input.ts";
import { type ComparedFilms, comparedFilms, type LesionOnBoth, pairsOf } from "./compare-films/compared-films.ts";
import { basisOf, cautionsOf } from "./compare-films/comparison-words.ts";
import { type Homography, reversed } from "./compare-films/homography.ts";
import { areaRatioOf, carried } from "./compare-films/lesion-change.ts";

const sources = sourcesOf([hartley, evangelidis, ruttimann]);

/**
 * Two films of one tooth brought together: the transform, whether they can be compared, and what changed.
 * @throws Refusal `input.impossible` for a picture whose size is not columns times rows, landmarks outside the films, in
 * line or turned over, and outlines that meet themselves; `trace.tooFewPoints` for outlines under 3 corners.
 * @source Hartley and Zisserman 2003, Evangelidis and Psarakis 2008 (memory), Ruttimann 1986 (seen);
 * docs/methods/compare-films.md
 */
export const compareFilmsTopic = defineTopic({
  name: "compareFilms",
  version: 2,
  summary: "Two films of one tooth brought together: whether they compare, and what changed.",
  asked: "withPictures",
  input: compareFilmsInput,
  output: compareFilmsOutput,
  sources,
  compute: compareFilms,
});

function compareFilms(input: CompareFilmsInput): CompareFilmsOutput {
  const faults = faultsOf(input);
  if (faults.length > 0) throw new Refusal("input.impossible", "Cannot compare the films: they don't fit", {}, faults);
  const films = comparedFilms(input);
  const against = reasonsAgainst(films);
  const [a, b, c, d, e, f, g, h, i] = films.map;
  return {
    transform: [
      [a, b, c],
      [d, e, f],
      [g, h, i],
    ],
    comparable: against.length === 0,
    statement:
      against.length === 0 ? "The films can be compared." : `The films can't be compared. ${against.join(" ")}`,
    residualPx: films.residualPx,
    ...(films.residualMm === undefined ? {} : { residualMm: films.residualMm }),
    ...(films.residualNearLesionPx === undefined ? {} : { residualNearLesionPx: films.residualNearLesionPx }),
    landmarkResidualPx: films.landmarkResidualPx,
    pieces: { looked: films.shifts.looked, found: films.shifts.shifts.length },
    stretch: films.stretch,
    correlation: films.correlation,
    overlap: films.overlap,
    carried: carriedOutlines(films.lesions, films.map),
    others: films.others.map((lesion) => ({
      name: lesion.name,
      ...carriedOutlines(lesion, films.map),
      ...(against.length > 0 ? {} : ratioAndInterval(input, films, lesion)),
    })),
    ...changeOf(input, films, against),
    basis: basisOf(
      input,
      sources.map(({ id }) => id),
    ),
    cautions: cautionsOf(input, films),
  };
}

function faultsOf({ before, after, landmarks }: CompareFilmsInput): Fault[] {
  const sizes = Object.entries({ before, after }).flatMap(([name, { columns, rows, grey }]): Fault[] =>
    grey.length === columns * rows
      ? []
      : [
          {
            path: `${name}.grey`,
            says: `holds ${grey.length} numbers; ${columns} x ${rows} px need ${columns * rows}`,
          },
        ],
  );
  const isOn = ([u, v]: readonly [number, number], film: typeof before): boolean =>
    u >= -0.5 && v >= -0.5 && u < film.columns - 0.5 && v < film.rows - 0.5;
  const outside = landmarks.flatMap((one, index): Fault[] =>
    Object.entries({ before, after }).flatMap(([name, film]) => {
      const place = name === "before" ? one.before : one.after;
      const says = `[${place}] is outside the film of ${film.columns} x ${film.rows} px`;
      return isOn(place, film) ? [] : [{ path: `landmarks[${index}].${name}`, says }];
    }),
  );
  return [...sizes, ...outside];
}

function carriedOutlines({ before, after }: LesionOnBoth, map: Homography): CompareFilmsOutput["carried"] {
  return {
    ...(before === undefined ? {} : { beforeOnAfter: pairsOf(carried(map, before)) }),
    ...(after === undefined ? {} : { afterOnBefore: pairsOf(carried(reversed(map), after)) }),
  };
}

type Change = Pick<CompareFilmsOutput, "areaRatio" | "intervals" | "differenceSigma" | "difference" | "notComputed">;

/** What changed, where the films can be compared; otherwise what is absent, and why. */
function changeOf(input: CompareFilmsInput, films: ComparedFilms, against: readonly string[]): Change {
  if (against.length > 0) {
    const why = `the films can't be compared: ${against.join(" ")}`;
    return {
      intervals: {},
      notComputed: ["areaRatio", "differenceSigma", "difference"].map((name) => ({ name, why })),
    };
  }
  const { values, sigma } = films.difference();
  const { columns, rows } = input.before;
  const ratio = ratioOf(input, films, films.lesions);
  return {
    ...(ratio === undefined ? {} : { areaRatio: ratio.ratio }),
    intervals: ratio === undefined ? {} : { areaRatio: ratio.interval },
    differenceSigma: sigma,
    ...(input.wantsDifference ? { difference: { columns, rows, values } } : {}),
    notComputed: [
      ...(ratio === undefined ? [{ name: "areaRatio", why: "it needs the lesion's outline on both films" }] : []),
      ...(input.wantsDifference ? [] : [{ name: "difference", why: "it was not asked for" }]),
    ],
  };
}

function ratioOf({ sigmaPx }: CompareFilmsInput, films: ComparedFilms, { before, after }: LesionOnBoth) {
  if (before === undefined || after === undefined) return undefined;
  return areaRatioOf(before, after, films.map, { sigmaPx, residualPx: films.residualNear(before) });
}

function ratioAndInterval(input: CompareFilmsInput, films: ComparedFilms, lesion: LesionOnBoth) {
  const found = ratioOf(input, films, lesion);
  return found === undefined ? {} : { areaRatio: found.ratio, interval: found.interval };
}
