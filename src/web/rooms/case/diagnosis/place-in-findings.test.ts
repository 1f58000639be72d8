import { describe, expect, it } from "vitest";
import { newBodies } from "../new-bodies.ts";
import { placeInFindings } from "./place-in-findings.ts";

describe("a place of a sheet in words", () => {
  const body = newBodies.findings("2026-01-02", "26");

  it("names the tooth and the test", () => {
    expect(placeInFindings("teeth.0.cold.lingersSeconds", body)).toBe("Tooth 26, cold, lingers seconds");
    expect(placeInFindings("teeth.0.probingMm.buccal", body)).toBe("Tooth 26, probing, buccal");
  });

  it("names what is no test by its own name", () => {
    expect(placeInFindings("history.traumaOn", body)).toBe("History, trauma on");
    expect(placeInFindings("teeth.4.bite", body)).toBe("Tooth 5, bite");
  });
});
