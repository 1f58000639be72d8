import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type SampleBench, sampleBench } from "../../test/sample-bench.ts";
import type { HiddenView, RefusalView } from "./api.ts";

let one: SampleBench;
beforeAll(async () => {
  one = await sampleBench();
});
afterAll(() => one.close());

const hiddenIn = async (tooth: string) => one.ask({ url: `/api/teeth/${tooth}/hidden` });

describe("what may hide in a tooth", () => {
  it("goes out with every count, its share and where it was published", async () => {
    const { tooth, features } = (await hiddenIn("26")).json<HiddenView>();
    expect([tooth, features.map(({ feature }) => feature)]).toEqual(["26", ["secondMesiobuccal"]]);
    const [only] = features;
    expect(only?.prior.interval.low).toBeLessThan(only?.prior.mean ?? 0);
    expect(only?.series.every(({ n, N, interval }) => interval.low < n / N && n / N < interval.high)).toBe(true);
  });

  it("is an empty list for a tooth in which nobody counted any", async () => {
    expect((await hiddenIn("11")).json<HiddenView>()).toEqual({ tooth: "11", features: [] });
  });

  it("is refused for what is no tooth", async () => {
    const reply = await hiddenIn("99");
    expect([reply.statusCode, reply.json<RefusalView>().faults.map(({ path }) => path)]).toEqual([400, ["tooth"]]);
  });
});
