import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { tracedCourse } from "../src/core/radiograph/trace/traced-course.ts";
import { type ImagePoint, px } from "../src/core/units.ts";
import { cropFilm } from "../src/imaging/crop.ts";
import { decodeFilm } from "../src/imaging/decode-film.ts";
import { invertFilm } from "../src/imaging/invert.ts";
import { ridge, ridgeCost } from "../src/imaging/ridge.ts";

const shared = process.env.CANALOG_SHARED ?? join(import.meta.dirname, "..", "..", "shared");
const overview = join(shared, "data", "canine_slices_ccby4", "ScanOverviews.png");
const missing = existsSync(overview)
  ? undefined
  : `the overview of real canines is not at ${overview}; set CANALOG_SHARED`;

type Place = readonly [column: number, row: number];
const placeOf = ([column, row]: Place): ImagePoint => ({ column: px(column), row: px(row) });

/** Two canines of the overview, each with the way of its canal as it was marked by eye, in pixels of its part. */
const canines = [
  {
    line: "dark",
    part: { column: 421, row: 233 },
    canal: [
      [43, 112],
      [46, 80],
      [50, 48],
    ],
  },
  {
    line: "bright",
    part: { column: 834, row: 444 },
    canal: [
      [34, 115],
      [34, 85],
      [31, 52],
    ],
  },
] as const;

describe(`real canines${missing === undefined ? "" : `, skipped: ${missing}`}`, () => {
  it.skipIf(missing).each(canines)(
    "a course along the $line canal from end to end keeps to it, and does not run round the root",
    async ({ line, part, canal }) => {
      const whole = await decodeFilm(new Uint8Array(readFileSync(overview)), "overview.png");
      const film = invertFilm(cropFilm(whole, { ...part, columns: 76, rows: 190 }));
      const cost = ridgeCost(ridge(film, { line }));
      const [first, middle, last] = canal;
      const { points } = tracedCourse({ cost, columns: 76, rows: 190 }, [placeOf(first), placeOf(last)]);
      for (const { column, row } of points) {
        const [from, to] = row > middle[1] ? [first, middle] : [middle, last];
        const share = (row - from[1]) / (to[1] - from[1]);
        // The canal is 2 to 3 pixels wide, and was marked to a pixel.
        expect(Math.abs(column - (from[0] + share * (to[0] - from[0])))).toBeLessThan(2.5);
      }
    },
  );
});
