import type { BodyOf } from "../../../../src/record/parts.ts";
import type { Story } from "./story.ts";

type Used = BodyOf<"visit">["instruments"][number];

const turning = { alloy: "nickelTitanium", movement: "continuous", rpm: 300, torqueLimitNmm: 20 } as const;
const red06 = {
  ...{ ...turning, size: 25, taper: 0.06, instrument: "demo-25-06" },
  file: { id: "demo-file-red-06-b", label: "25/.06 B", usesBefore: 0, turnsBefore: 0, sterilisationsBefore: 0 },
} as const;
const yellow04 = {
  ...{ ...turning, size: 20, taper: 0.04, instrument: "demo-20-04" },
  file: { id: "demo-file-yellow-04-a", label: "20/.04 A", usesBefore: 0, turnsBefore: 0, sterilisationsBefore: 1 },
} as const;
const red04 = (usesBefore: number, turnsBefore: number, sterilisationsBefore: number) => ({
  ...{ ...turning, size: 25, taper: 0.04, instrument: "demo-25-04" },
  file: { id: "demo-file-red-04-a", label: "25/.04 A", usesBefore, turnsBefore, sterilisationsBefore },
});

/** Seconds in each canal, in the order of the visit's canals, by the number of the case. */
const uses: Readonly<Record<number, readonly (readonly [Omit<Used, "canal">, readonly number[]])[]>> = {
  114: [[red06, [14, 14, 15, 15]]],
  235: [[red04(0, 0, 1), [14, 13, 12]]],
  236: [[red04(1, 195, 2), [15, 14, 11]]],
  239: [
    [yellow04, [16, 18, 14, 12]],
    [red04(2, 395, 3), [14, 16, 13, 11]],
  ],
};

/** The uses of the demo's counted files in the first visit of a story; no other instrument of the logbook is told. */
export function countedUses({ number, canals }: Story, index: number): Used[] {
  if (index > 0) return [];
  return (uses[number] ?? []).flatMap(([instrument, seconds]) =>
    seconds.map((of, at): Used => {
      const { canal, workingLengthMm: depthMm } = canals[at] ?? {};
      return { ...instrument, seconds: of, ...(canal === undefined ? {} : { canal }), ...(depthMm ? { depthMm } : {}) };
    }),
  );
}
