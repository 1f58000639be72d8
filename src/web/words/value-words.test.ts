import { describe, expect, it } from "vitest";
import { sentenceInWords, sourceInWords, valueInWords } from "./value-words.ts";

describe("values in words", () => {
  it("are said by hand where they are known, in a list as well", () => {
    expect(valueInWords("relativeSigma")).toBe("Error of the scale");
    expect(sentenceInWords("Above 30 mmHg.")).toBe("Above 30 mmHg.");
    expect(valueInWords("known[0].lengthMm")).toBe("Length");
  });

  it("lose their unit where they are not known", () => {
    expect(valueInWords("wallLeftMm")).toBe("Wall left");
    expect(valueInWords("someDeg")).toBe("Some");
    expect(valueInWords("Mm")).toBe("Mm");
  });

  it("say which use or which instrument of several", () => {
    expect(valueInWords("uses[1].tipDepthMm")).toBe("Use 2, depth of its tip");
    expect(valueInWords("uses[0].course.points")).toBe("Use 1, course");
    expect(valueInWords("uses[0]")).toBe("Use 1");
    expect(valueInWords("candidates[2].instrument.workingMm")).toBe("Instrument 3, working part");
    expect(valueInWords("instrument.rpm")).toBe("Turns a minute");
  });

  it("stand in a sentence as words, with their sources", () => {
    expect(
      sentenceInWords(
        "The published classes disagree: moderate by schneiderDeg (schneider-1971), mild by pruettRadiusMm (estrela-2008).",
      ),
    ).toBe(
      "The published classes disagree: moderate by angle after Schneider (Schneider 1971), mild by radius of that bend (Estrela 2008).",
    );
    expect(sentenceInWords("views[0] shows more than views[1].")).toBe("Film 1 shows more than film 2.");
    expect(sentenceInWords("evidence[1] is a further look.")).toBe("Look 2 is a further look.");
    expect(sentenceInWords("Mark it again (at the apex).")).toBe("Mark it again (at the apex).");
  });

  it("name a source by its people and year", () => {
    expect(sourceInWords("evangelidis-psarakis-2008")).toBe("Evangelidis Psarakis 2008");
    expect(sourceInWords("ese-2019-deep-caries")).toBe("ESE 2019, deep caries");
    expect(sourceInWords("iso-3630-1")).toBe("ISO 3630 1");
    expect(sourceInWords("common practice")).toBe("common practice");
    expect(sentenceInWords("no figure of cbct is published: 3.0 % (hatipoglu-2023-radix), 5.6 % (martins-2022)")).toBe(
      "No figure of CBCT is published: 3.0 % (Hatipoglu 2023, radix), 5.6 % (Martins 2022)",
    );
  });
});
