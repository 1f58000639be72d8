import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { partTypes } from "../parts.ts";
import { minuteNow, visitClock, withClockStarted, withClockStopped } from "./visit-clock.ts";
import { emptyVisit } from "./visit-for-tests.ts";

const visit = emptyVisit;
const at = (time: string): Date => new Date(`2026-03-12T${time}Z`);

describe("a visit's clock", () => {
  it("counts whole minutes from its start to now, and to its end once it was stopped", () => {
    const running = withClockStarted(visit, at("14:02:00"));
    expect(visitClock(running, at("14:39:59").getTime())).toEqual({ stands: "runs", minutes: 37 });
    expect(minuteNow(running, at("14:39:59").getTime())).toBe(37);
    const stopped = withClockStopped(running, at("15:00:30"));
    expect(stopped.minutes).toBe(58);
    expect(visitClock(stopped, at("18:00:00").getTime())).toEqual({ stands: "ended", minutes: 58 });
    expect(minuteNow(stopped, at("18:00:00").getTime())).toBeUndefined();
    expect(partTypes.visit.body.safeParse(stopped).error).toBeUndefined();
  });

  it("has no minute before its start", () => {
    expect(visitClock(visit, 0)).toEqual({ stands: "notStarted", minutes: 0 });
    expect(minuteNow(visit, 0)).toBeUndefined();
  });

  it("goes on from its first start when it was stopped too early", () => {
    const stopped = withClockStopped(withClockStarted(visit, at("14:00:00")), at("14:20:00"));
    const again = withClockStarted(stopped, at("14:30:00"));
    expect(again).toMatchObject({ startedAt: at("14:00:00").toISOString() });
    expect(again.endedAt).toBeUndefined();
    expect(minuteNow(again, at("14:30:00").getTime())).toBe(30);
  });

  it("takes a clock that ran through the night as forgotten, and writes no minutes of it", () => {
    const running = withClockStarted(visit, at("08:00:00"));
    expect(visitClock(running, at("18:00:00").getTime()).stands).toBe("runs");
    expect(visitClock(running, at("18:01:00").getTime()).stands).toBe("forgotten");
    expect(minuteNow(running, at("18:01:00").getTime())).toBeUndefined();
    const stopped = withClockStopped(running, at("18:01:00"));
    expect(stopped.minutes).toBeUndefined();
    expect(stopped.endedAt).toBe(at("18:01:00").toISOString());
  });

  it("never counts below nothing where a clock was set back, and writes a minute at least", () => {
    const running = withClockStarted(visit, at("14:00:00"));
    expect(visitClock(running, at("13:00:00").getTime())).toEqual({ stands: "runs", minutes: 0 });
    expect(withClockStopped(running, at("14:00:20")).minutes).toBe(1);
  });

  it("gives minutes that a row takes, whenever it is asked", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e10 }), (after) => {
        const minute = minuteNow(withClockStarted(visit, at("14:00:00")), at("14:00:00").getTime() + after);
        expect(minute === undefined || (minute >= 0 && minute <= 600 && Number.isInteger(minute))).toBe(true);
      }),
    );
  });
});
