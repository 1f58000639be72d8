import { describe, expect, it } from "vitest";
import { partTypes } from "./parts.ts";
import { priorOffers } from "./prior-offers.ts";

describe("the priors on offer", () => {
  it("hold the share that the commentary prints, 42.8 %, with where it was read", () => {
    // Balevi B, Evid Based Dent 2019;20(1):22-23 (seen): predictive values adjusted to a prevalence of 42.8 %.
    expect(priorOffers.map(({ prior }) => prior.share)).toEqual([0.428]);
    for (const { prior } of priorOffers) expect(prior.from).toMatch(/Balevi.*2019.*\(seen\)$/);
  });

  it("are taken by the record as they stand", () => {
    const { prior: form } = partTypes.findings.body.shape;
    for (const { prior } of priorOffers) expect(form.safeParse(prior).error).toBeUndefined();
  });
});
