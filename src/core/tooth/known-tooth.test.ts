import { describe, expect, it } from "vitest";
import { knownTooth } from "./known-tooth.ts";

describe("the tooth of a two-digit number", () => {
  it("is found among permanent and primary teeth", () => {
    expect(knownTooth("26", "describe it").name).toBe("upper left first molar");
    expect(knownTooth("85", "describe it").dentition).toBe("primary");
  });

  it.each(["19", "56", "6", ""])("%j is refused at its path with what can't be done", (text) => {
    const says = `${JSON.stringify(text)} is no two-digit number of a tooth (11-48, 51-85)`;
    expect(() => knownTooth(text, "describe it")).toThrow(
      expect.objectContaining({
        code: "tooth.unknown",
        message: `Cannot describe it: ${says}`,
        facts: { tooth: text },
        faults: [{ path: "tooth", says }],
      }),
    );
  });
});
