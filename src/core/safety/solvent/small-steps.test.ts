import { describe, expect, it } from "vitest";
import { run } from "./course-for-tests.ts";
import type { Evaporation } from "./liquid.ts";
import { type RoomAir, roomAir } from "./room-modes.ts";
import type { EvaporatingDose } from "./vapour-course.ts";

/**
 * The same room by small steps and nothing of the above: a diagonally implicit stepper of order 2 that no stiffness troubles,
 * whose result for half the step cancels its leading error.
 */
function stepped(
  air: RoomAir,
  evaporation: Evaporation & { ratePerMin: number },
  doses: EvaporatingDose[],
  untilMin: number,
) {
  const coarse = walk(air, evaporation, doses, { untilMin, step: 1 / 256 });
  const fine = walk(air, evaporation, doses, { untilMin, step: 1 / 512 });
  return { near: (4 * fine.near - coarse.near) / 3, far: (4 * fine.far - coarse.far) / 3 };
}

function walk(
  air: RoomAir,
  { kind, ratePerMin }: Evaporation & { ratePerMin: number },
  doses: EvaporatingDose[],
  { untilMin, step }: { untilMin: number; step: number },
) {
  const near = air.near ?? { volumeM3: 1, exchangeM3Min: 1 };
  const gamma = 1 - Math.SQRT1_2;
  let [liquid, cNear, cFar] = [0, 0, 0];
  const rates = (l: number, n: number, f: number, constant: number) => {
    const source = kind === "firstOrder" ? ratePerMin * l : constant;
    const trade = near.exchangeM3Min * (f - n);
    return [
      kind === "firstOrder" ? -ratePerMin * l : 0,
      (source + trade) / near.volumeM3,
      (-trade - air.outflowM3Min * f) / air.farM3,
    ];
  };
  const h = gamma * step;
  /** Solves y = base + h rates(y). */
  const implicit = (base: number[], constant: number) => {
    const [bl = 0, bn = 0, bf = 0] = base;
    const l = kind === "firstOrder" ? bl / (1 + h * ratePerMin) : bl;
    const g = kind === "firstOrder" ? ratePerMin * l : constant;
    const a = 1 + (h * near.exchangeM3Min) / near.volumeM3;
    const b = (h * near.exchangeM3Min) / near.volumeM3;
    const c = (h * near.exchangeM3Min) / air.farM3;
    const d = 1 + (h * (near.exchangeM3Min + air.outflowM3Min)) / air.farM3;
    const right = bn + (h * g) / near.volumeM3;
    const n = (right * d + b * bf) / (a * d - b * c);
    return [l, n, (bf + c * n) / d];
  };
  for (let at = 0; at < untilMin; at += step) {
    for (const dose of doses) if (dose.atMin === at && kind === "firstOrder") liquid += dose.mg;
    const running = doses.filter(({ atMin }) => atMin <= at && at < atMin + 1 / ratePerMin);
    const constant = kind === "constant" ? running.reduce((sum, { mg }) => sum + mg * ratePerMin, 0) : 0;
    const y = [liquid, cNear, cFar];
    const first = implicit(y, constant);
    const k1 = rates(first[0] ?? 0, first[1] ?? 0, first[2] ?? 0, constant);
    const second = implicit(
      y.map((value, index) => value + step * (1 - gamma) * (k1[index] ?? 0)),
      constant,
    );
    [liquid = 0, cNear = 0, cFar = 0] = second;
  }
  return { near: cNear, far: cFar };
}

describe("two zones solved exactly and by small steps", () => {
  const rooms: [string, RoomAir][] = [
    ["a surgery", roomAir({ volumeM3: 31.2, airChangesPerHour: 6 }, { radiusM: 0.5, airSpeedMPerMin: 3.6 })],
    ["a closed room", roomAir({ volumeM3: 25, airChangesPerHour: 0 }, { radiusM: 0.3, airSpeedMPerMin: 6 })],
    ["a stiff one", { farM3: 3.8, outflowM3Min: 13.8, near: { volumeM3: 0.01, exchangeM3Min: 5 } }],
  ];
  const ways: (Evaporation & { ratePerMin: number })[] = [
    { kind: "firstOrder", ratePerMin: 0.25 },
    { kind: "firstOrder", ratePerMin: 2 },
    { kind: "constant", ratePerMin: 0.125 },
  ];
  const doses = [
    { atMin: 0, mg: 150 },
    { atMin: 5, mg: 300 },
    { atMin: 12, mg: 75 },
  ];
  it.each(rooms.flatMap(([name, air]) => ways.map((way) => [name, way.kind, way.ratePerMin, { air, way }] as const)))(
    "agree in %s, %s at %d a minute (C6)",
    (_name, _kind, _rate, { air, way }) => {
      const { near, far } = run(air, way, doses);
      for (const at of [3, 8, 20, 40]) {
        const known = stepped(air, way, doses, at);
        expect(near.levelAt(at) / known.near).toBeCloseTo(1, 5);
        expect(far.levelAt(at) / known.far).toBeCloseTo(1, 5);
      }
    },
  );
});
