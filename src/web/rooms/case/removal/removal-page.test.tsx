import { QueryClient, QueryClientProvider } from "@tanstack/react-query";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Router } from "wouter";
import { sampleParts } from "../../../../../test/sample-case.ts";
import { samplePiece, sampleRemovalEntry, sampleRemovalTold } from "../../../../../test/sample-removal.ts";
import type { LedgerEntry } from "../../../../record/ledger-entry.ts";
import type { BodyOf, Part } from "../../../../record/parts.ts";
import { piecesOf } from "../../../../record/pieces.ts";
import { DraftBook } from "../../../record/draft-book.ts";
import { CaseNow } from "../case-now.ts";
import { RemovalPage } from "./removal-page.tsx";
import { pieceAt, removalPageOf, removalStandingPages } from "./removal-pages.ts";

const attempt = (over: object = {}): BodyOf<"removal">["attempts"][number] => ({
  ...{ at: "2024-03-06T09:00:00Z", minutes: 12, tool: "ultrasonicTip", tip: "ET25", moved: "nothing", note: "" },
  ...over,
});
const rules = { setAt: "2024-03-06T08:00:00Z", minutes: 20, attempts: 3 };
const others = sampleParts().filter(({ kind }) => kind !== "mishap");

interface Drawn {
  readonly removal?: Partial<BodyOf<"removal">>;
  readonly ledger?: readonly LedgerEntry[];
  readonly parts?: readonly Part[];
  readonly readOnly?: boolean;
}

function drawn({ removal = {}, ledger = [sampleRemovalEntry()], readOnly = false, ...more }: Drawn = {}): string {
  const parts = more.parts ?? [...others, ...samplePiece(removal)];
  const [piece] = piecesOf(parts);
  if (piece === undefined) throw new Error("no piece");
  const book = readOnly ? undefined : new DraftBook({ put: () => new Promise(() => undefined) });
  const add = readOnly ? undefined : () => undefined;
  return renderToStaticMarkup(
    <Router ssrPath="/case/c/removal-p">
      <QueryClientProvider client={new QueryClient()}>
        <CaseNow.Provider value={{ caseId: "c", parts, ledger, add }}>
          <RemovalPage
            {...{ caseId: "c", piece, parts, ledger, day: "2024-03-06", book }}
            noteAnatomy={() => undefined}
            takeOut={() => undefined}
          />
        </CaseNow.Provider>
      </QueryClientProvider>
    </Router>,
  );
}
const text = (html: string): string => html.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");

describe("the page on which a removal is weighed", () => {
  it("says a refused path in words, with the wall that is left and on which side", () => {
    const html = text(drawn());
    expect(html).toContain("◆ Path refused: it leaves less than your limit");
    expect(html).toContain("0.25 mm below your limit of 0.50 mm");
    expect(html).toContain("towards the furcation 0.90 mm 0.25 mm 6.00 mm critical");
    expect(html).toContain("distal 0.10 mm wall not known");
    expect(html).toContain("○ above 0.5 mm, your own limit");
  });

  it("says towards which side the line is taken to run, and that it is assumed where nobody told it", () => {
    const asked = (input: object) => text(drawn({ ledger: [{ ...sampleRemovalEntry(), input }] }));
    expect(asked({ fragment: {} })).toContain(
      "Inner side of the bend: towards the furcation; nobody told it, and the sum assumes that side.",
    );
    const told = asked({ fragment: {}, innerSide: "mesial" });
    expect(told).toContain("Inner side of the bend: mesial.");
    expect(told).not.toContain("assumes that side");
  });

  it("puts the groups of this case first, as n of N with their interval, and says where N is not printed", () => {
    const html = text(drawn());
    expect(html).toContain("12/40, 30 %");
    expect(html).toContain("18 to 45 %");
    expect(html.indexOf("Groups that this case belongs to")).toBeLessThan(html.indexOf("Other published groups"));
    expect(html).toContain("direction only");
    const none = sampleRemovalEntry(sampleRemovalTold({ removalChance: [] }));
    expect(text(drawn({ ledger: [none] }))).toContain("No published group is known to be this case");
  });

  it("shows every way in both columns and says that the figures do not decide, and no way is best", () => {
    const html = text(drawn());
    expect(html).toContain("◇ The figures do not decide: the intervals of remove");
    for (const way of ["Take it out", "Pass it", "Leave it, fill to it", "Surgery", "Take the tooth out"])
      expect(html).toContain(way);
    expect(html).not.toMatch(/\bbest way\b|\bsafe\b|proves/i);
    const decides = sampleRemovalEntry(sampleRemovalTold({ figuresDecide: true, figuresSay: "They lie apart" }));
    expect(text(drawn({ ledger: [decides] }))).not.toContain("do not decide");
  });

  it("draws ways, chances and what drives the difference, each with its words", () => {
    const pictures = [...drawn().matchAll(/role="img" aria-label="([^"]*)"/g)].map(([, words = ""]) => words);
    expect(pictures.some((words) => /0\.9|90 %/.test(words))).toBe(true);
    expect(pictures.filter((words) => words.length > 40).length).toBeGreaterThanOrEqual(3);
  });

  it("gives reasons on both sides, and the plain words for the patient", () => {
    const html = text(drawn());
    expect(html).toContain("For It came out in 12 of 40 like it Against 0.25 mm of wall is left");
    expect(html).toContain("The same in plain words, to tell the patient It may come out.");
    const none = sampleRemovalEntry(sampleRemovalTold({ reasons: { for: [], against: [] }, tellPatient: [] }));
    expect(text(drawn({ ledger: [none] }))).toContain("For Nothing that the figures know. Against Nothing");
  });

  it("leads every number to its entry in the ledger", () => {
    expect(drawn().match(new RegExp(`href="#${"b2".repeat(32)}"`, "g"))?.length).toBeGreaterThan(10);
  });

  it("says what stands in the way where nothing could be computed, and still takes attempts", () => {
    const { output: _output, ...entry } = sampleRemovalEntry();
    const html = text(drawn({ ledger: [{ ...entry, refused: ["the top of the piece lies beyond the course"] }] }));
    expect(html).toContain("The top of the piece lies beyond the course");
    expect(html).toContain("Start attempt 1");
    expect(html).not.toContain("The ways side by side");
  });

  it("asks for rules before the first attempt, and says when they were set", () => {
    expect(text(drawn())).toContain("None set. They are yours, and belong before the first attempt.");
    expect(text(drawn({ removal: { stopRules: rules } }))).toMatch(/● Set 6 Mar 2024/);
    const late = { stopRules: { ...rules, setAt: "2024-03-06T09:30:00Z" }, attempts: [attempt()] };
    expect(text(drawn({ removal: late }))).toContain("◇ Set after the first attempt began");
  });

  it("keeps rules closed once an attempt began, until they are changed by a press that notes the time", () => {
    const html = drawn({ removal: { stopRules: rules, attempts: [attempt()] } });
    expect(html).toMatch(/<fieldset class="edit-part" disabled="">/);
    expect(text(html)).toContain("Change them now");
  });

  it.each([
    [12, "12 of 20 min: below your rule"],
    [16, "◇ 16 of 20 min: near your rule"],
    [21, "◆ 21 of 20 min: your rule is reached"],
  ])("says of %d minutes where they stand against the rule", (minutes, says) => {
    expect(text(drawn({ removal: { stopRules: rules, attempts: [attempt({ minutes })] } }))).toContain(says);
  });

  it("goes on with a clock that was left running, from the moment in the record", () => {
    const running = { since: new Date(Date.now() - 65_000).toISOString(), tool: "loop", tip: "wire" } as const;
    const html = text(drawn({ removal: { running } }));
    expect(html).toContain("Stop attempt 1");
    expect(html).toMatch(/1:0\d/);
  });

  it("asks what the last attempt moved, by digits, until that is said", () => {
    const asked = drawn({ removal: { attempts: [attempt({ moved: "notRecorded" })] } });
    expect(text(asked)).toContain("What moved in attempt 1?");
    expect(asked.match(/aria-keyshortcuts="\d"/g)).toHaveLength(7);
    expect(text(drawn({ removal: { attempts: [attempt()] } }))).not.toContain("What moved in attempt 1?");
  });

  it("offers to set the mishap by the result, and where they differ says so", () => {
    expect(text(drawn())).toContain("and the mishap is handled the same (now: still open)");
    const result = { is: "bypassed", on: "2024-03-06", because: "" } as const;
    expect(text(drawn({ removal: { result } }))).toContain("Set it to bypassed");
  });

  it("asks whether a person stands by a wall that is thinner than the canal only where there is one, or it was said", () => {
    const asks = "Walls thinner than the canal were measured twice";
    const walls = [{ side: "furcation" as const, mm: 0.7 }];
    expect(drawn({ removal: { canalDiameterMm: 0.45, walls } })).not.toContain(asks);
    expect(drawn({ removal: { canalDiameterMm: 0.75, walls } })).toContain(asks);
    expect(drawn({ removal: { canalDiameterMm: 0.45, walls, wallsConfirmed: true } })).toContain(asks);
  });

  it("offers nothing to press where the case is only looked at", () => {
    expect(drawn({ readOnly: true, removal: { stopRules: rules, attempts: [attempt()] } })).not.toContain("<button");
  });

  it("is begun from the page of a piece that nobody has weighed yet", () => {
    const [mishap] = samplePiece();
    const parts = mishap === undefined ? others : [...others, mishap];
    expect(text(drawn({ parts, ledger: [] }))).toContain("Weigh its removal");
    expect(drawn({ parts, ledger: [], readOnly: true })).not.toContain("<button");
  });
});

describe("the line of a piece beside the spine", () => {
  const lines = (parts: readonly Part[]) => removalStandingPages(parts);
  const [mishap, removal] = samplePiece();

  it("names the place where it is begun, later its weighing, and is found again by that address", () => {
    const alone = mishap === undefined ? [] : [mishap];
    expect(lines(alone)).toMatchObject([{ id: "weigh-mishap-p", title: "Removal weighed", look: true }]);
    expect(lines(samplePiece())).toMatchObject([{ id: "removal-p", line: "take it out, pass it, leave it" }]);
    for (const parts of [alone, samplePiece()])
      for (const piece of piecesOf(parts)) expect(pieceAt(removalPageOf(piece), parts)).toEqual(piece);
    expect(pieceAt("hidden", samplePiece())).toBeUndefined();
  });

  it("says that the clock runs, how many attempts there were, or what came of it", () => {
    const running = { since: "2024-03-06T09:00:00Z", tool: "loop", tip: "" } as const;
    const result = { is: "left", on: "2024-03-06", because: "" } as const;
    expect(lines(samplePiece({ running }))).toMatchObject([{ line: "◇ the clock runs", look: true }]);
    expect(lines(samplePiece({ attempts: [attempt(), attempt()] }))).toMatchObject([{ line: "attempts: 2" }]);
    expect(lines(samplePiece({ attempts: [attempt()], result }))).toMatchObject([{ line: "left in place" }]);
  });

  it("names the canal where there are several pieces", () => {
    const two = [...samplePiece(), ...samplePiece()].map((one, at) => ({ ...one, id: `${one.id}-${at}` }) as Part);
    const titles = lines(
      two.map((one) => (one.kind === "removal" ? { ...one, body: { ...one.body, mishap: "x" } } : one)),
    );
    expect(titles.map(({ title }) => title)).toContain("Removal weighed, MB1");
    expect(removal?.kind).toBe("removal");
  });
});
