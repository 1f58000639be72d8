import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type SampleBench, sampleBench } from "../../test/sample-bench.ts";
import { firstSettings, type Settings } from "../record/settings.ts";
import type { RefusalView } from "./api.ts";

let one: SampleBench;
beforeAll(async () => {
  one = await sampleBench();
});
afterAll(() => one.close());

const get = async (): Promise<Settings> => (await one.ask({ url: "/api/settings" })).json<Settings>();
const put = (payload: object) => one.ask({ method: "PUT", url: "/api/settings", payload });

const whole: Settings = {
  ...firstSettings,
  who: "A. Writer",
  clinic: {
    room: { volumeM3: 30, airChangesPerHour: 0, from: "measured" },
    evaporationPerMin: { low: 0.1, high: 2 },
    exposureLimits: [{ solvent: "xylene", authority: "Own", mgM3: 220, averagingMin: 480, source: "a decree" }],
    doseLimits: "own",
    ownDoseLimits: [{ agent: "lidocaine", mgPerKg: 4, source: "the clinic's list" }],
    vasoconstrictorLimits: [{ name: "epinephrine", limit: 100, source: "the clinic's list" }],
    irrigation: { sideVentedMm: 1, protocol: [{ solution: "EDTA", minutesAtLeast: 1 }] },
  },
  emergency: {
    calls: [
      { who: "Ambulance", number: "112" },
      { who: "Anaesthetist on call", number: "4711" },
    ],
    kit: "room 3, first drawer",
    protocols: { hypochlorite: "As agreed.\nThen call." },
  },
};

describe("the clinic's settings over the API", () => {
  it("stand as they were put, the order of calls too, and a closed room is taken", async () => {
    expect((await put(whole)).statusCode).toBe(200);
    expect(await get()).toEqual(whole);
  });

  it.each([
    ["a negative volume", { clinic: { room: { ...whole.clinic?.room, volumeM3: -3 } } }, 400, "clinic.room.volumeM3"],
    [
      "air changes below none",
      { clinic: { room: { ...whole.clinic?.room, airChangesPerHour: -1 } } },
      400,
      "clinic.room.airChangesPerHour",
    ],
    [
      "a limit by the week",
      { clinic: { exposureLimits: [{ ...whole.clinic?.exposureLimits?.[0], averagingMin: 30 }] } },
      400,
      "clinic.exposureLimits[0].averagingMin",
    ],
    [
      "a range upside down",
      { clinic: { evaporationPerMin: { low: 2, high: 1 } } },
      422,
      "clinic.evaporationPerMin.low",
    ],
    ["own doses without any", { clinic: { doseLimits: "own" } }, 422, "clinic.doseLimits"],
    [
      "a protocol of another emergency",
      { emergency: { calls: [], protocols: { fire: "run" } } },
      400,
      "emergency.protocols",
    ],
    [
      "a call without a number",
      { emergency: { calls: [{ who: "x", number: "" }], protocols: {} } },
      400,
      "emergency.calls[0].number",
    ],
  ])("%s is refused at its place, and what stood stands", async (_, more, status, path) => {
    const answer = await put({ ...whole, ...more });
    expect(answer.statusCode).toBe(status);
    expect(answer.json<RefusalView>().faults?.map((fault) => fault.path)[0]).toContain(path);
    expect(await get()).toEqual(whole);
  });

  it("are not of sums of films: no ledger is behind", async () => {
    await put({ ...whole, clinic: {} });
    expect(await one.bench.store.ledgersBehind()).toBeUndefined();
  });
});
