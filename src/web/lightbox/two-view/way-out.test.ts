import { describe, expect, it } from "vitest";
import { wayOutOf } from "./way-out.ts";

const films = ["Straight", "Shifted"];

describe("the way out of a refusal", () => {
  it.each([
    [
      ["views[1].points: the course runs the other way along the tooth than that of views[0]"],
      { is: "turnTrace", film: 1 },
    ],
    [
      ['missing: the trace on the film "Shifted" runs from the apex; turn the trace on that film'],
      { is: "turnTrace", film: 1 },
    ],
    [
      [
        "views[1].horizontalAngleDeg: 0.5 is the angle of the first view (0) within 1 degree: both films show the same; take one with the tube shifted",
      ],
      { is: "shiftTube", film: 1 },
    ],
    [['the film "Straight" has no scale; mark a known length on it'], { is: "markScale", film: 0 }],
    [
      ['it is not known whether mesial or distal lies to the right on the film "Shifted"; say it in the film\'s facts'],
      { is: "sayRight", film: 1 },
    ],
    [["the receptor is said to have been held in two ways on the films"], { is: "sayReceptor" }],
    [['the tube\'s angle on the film "Straight" is not known; say it'], { is: "sayAngle", film: 0 }],
    [["levels[0][1]: 30 mm is not inside the trace, which is 12.0 mm long"], { is: "freeLevels" }],
    [["a film that was chosen for DL no longer stands; choose its films again"], { is: "chooseFilms" }],
    [
      [
        "views[1].points: the course rises by 4.0 mm where that of views[0] rises by 9.0 mm; trace the same stretch of canal on both",
      ],
      { is: "traceSameStretch", film: 1 },
    ],
    [["views[0].landmarks: lie in one line"], { is: "markLandmarks", film: 0 }],
    [["something else", "the receptor is said to have been held in two ways"], { is: "sayReceptor" }],
  ] as const)("%j", (lines, way) => {
    expect(wayOutOf(lines, films)).toEqual(way);
  });

  it("is not known for words that name none", () => {
    expect(wayOutOf(["it rains"], films)).toBeUndefined();
    expect(wayOutOf([], films)).toBeUndefined();
  });
});
