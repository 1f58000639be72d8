import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Router } from "wouter";
import { part, sampleParts } from "../../../../../test/sample-case.ts";
import { deriveLedger } from "../../../../ledger/derive-ledger.ts";
import type { BodyOf, Part } from "../../../../record/parts.ts";
import { firstSettings } from "../../../../record/settings.ts";
import { InstrumentsPage } from "./instruments-page.tsx";

type Use = BodyOf<"visit">["instruments"][number];
const use = (more: Partial<Use> = {}): Use => ({
  ...{ canal: "MB1", size: 25, taper: 0.06, alloy: "nickelTitanium", movement: "continuous", rpm: 300, seconds: 30 },
  ...{ depthMm: 15, ...more },
});

/** The page of the sample with instruments in its first visit; its MB1 turns by 60 degrees on a radius of 5 mm. */
function page(instruments: Use[], addVisit?: () => void): string {
  const first = sampleParts().find(({ kind }) => kind === "visit")?.id;
  const parts = sampleParts().map(
    (one): Part =>
      one.kind === "visit" && one.id === first ? part("visit", one.id, { ...one.body, instruments }) : one,
  );
  const ledger = deriveLedger({
    ...{ caseId: "case-sample", settings: firstSettings, at: "2024-10-01T10:00:00Z" },
    ...{ parts, known: () => undefined },
  });
  return renderToStaticMarkup(
    <Router ssrPath="/case/case-sample/instruments">
      <InstrumentsPage {...{ caseId: "case-sample", parts, ledger, addVisit }} />
    </Router>,
  );
}
const text = (html: string): string =>
  html
    .replaceAll(/<[^>]+>/g, " ")
    .replaceAll("&#x27;", "'")
    .replaceAll(/\s+/g, " ");

describe("the page of instruments", () => {
  it("tells how hard the canal bent one, where, and leads from the number to how it came about", () => {
    const html = page([use()]);
    // 5 mm from its tip it is 0.55 mm thick; on a radius of 5 mm that is 5.5 %.
    expect(text(html)).toMatch(
      /5\.5 % of strain.*at most, 5\.\d mm from its tip, (9\.\d|10\.\d) mm from the reference point/,
    );
    expect(html).toMatch(/class="instruments-figure" href="#\w+"/);
    expect(html).toMatch(/aria-label="File 25\/\.06 seated in its canal/);
    expect(html).toMatch(/aria-label="Strain along/);
  });

  it("says what is bounded and what is not, each with its reason", () => {
    expect(text(page([use()]))).toMatch(
      /Strain there 5\.5 % no bound : An oblique view lowers the curvature, a foreshortened long axis raises it/,
    );
  });

  it("says plainly what lies over 10 %", () => {
    const html = text(page([use({ size: 70, taper: 0.08 })]));
    expect(html).toContain("▲ Over 10 %: the instrument can't follow this course without being bent beyond that.");
    expect(text(page([use()]))).not.toContain("▲ Over 10 %");
  });

  it("tells the life used as a ratio and a band, never as what is left", () => {
    const html = text(page([use(), use({ canal: "MB1", seconds: 10 })]));
    expect(html).toContain("Against one minute in the reference canal");
    expect(html).toContain("200");
    expect(html).toContain("Its uses are taken as those of one instrument");
    expect(html).not.toMatch(/\bsafe\b|\bproves?\b|remaining|left to/i);
  });

  it("says in the ledger's words what to record where something is missing", () => {
    const html = text(page([use({ depthMm: undefined, seconds: undefined, rpm: undefined })]));
    expect(html).toMatch(/How hard it was bent is not told: .*say how deep its tip went/);
    expect(html).toMatch(/What it used of its life is not told: .*speed/);
    expect(html).toContain("not said");
  });

  it("says a reason that several instruments of a canal share once, with their count", () => {
    const bare = { depthMm: undefined, seconds: undefined, rpm: undefined } as const;
    const html = text(page([use(bare), use({ ...bare, size: 30 }), use({ ...bare, size: 40 })]));
    const line = "◇ How hard it was bent is not told of 3 instruments, for the same reason: ";
    expect(html.split(line)).toHaveLength(2);
    expect(html).toMatch(new RegExp(`${line}.*say how deep its tip went\\. 25/\\.06, 30/\\.06, 40/\\.06`));
    expect(html).not.toContain("How hard it was bent is not told: ");
    // One that lacks it alone has its own line, where it is looked at.
    const alone = text(page([use(), use({ ...bare, size: 30 })]));
    expect(alone).not.toContain("for the same reason");
  });

  it("does not count the turns of a hand, and names rows without a canal", () => {
    const html = text(page([use({ movement: "hand", rpm: undefined }), use({ canal: undefined })]));
    expect(html).toContain("not counted");
    expect(html).toContain("1 instrument of a visit without a canal");
  });

  it("says what to record where there is none, and offers it where the case can be changed", () => {
    expect(text(page([]))).toContain("No instrument is recorded in a canal yet.");
    const none = renderToStaticMarkup(
      <Router ssrPath="/case/c/instruments">
        <InstrumentsPage caseId="c" parts={[]} ledger={[]} addVisit={() => undefined} />
      </Router>,
    );
    expect(text(none)).toContain("Add a visit");
    expect(page([])).toContain("To the last visit");
  });
});
