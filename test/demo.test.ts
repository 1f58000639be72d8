import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { caseFiles } from "../scripts/demo/cases/all-cases.ts";
import { filmsOnList } from "../scripts/demo/cases/film-list.ts";

import { caseId as known } from "../src/core/ids.ts";
import { solventTopic } from "../src/core/safety/solvent-topic.ts";
import { deriveLedger } from "../src/ledger/derive-ledger.ts";
import { type CaseFile, caseFileSchema } from "../src/record/case-file.ts";
import { patchesOf } from "../src/record/change.ts";
import { factsOf } from "../src/record/facts.ts";
import type { LedgerEntry } from "../src/record/ledger-entry.ts";
import { partsOf } from "../src/record/parts.ts";
import { firstSettings } from "../src/record/settings.ts";
import { advance, beforeFirst, replay, type Standing } from "../src/record/standing.ts";

const root = fileURLToPath(new URL("..", import.meta.url));
const list = join(root, "data/demo/films/films.json");
const rawList: unknown = existsSync(list) ? JSON.parse(readFileSync(list, "utf8")) : undefined;
const made = caseFiles(rawList);
const shipped = (name: string): string => readFileSync(join(root, "data/demo/cases", name), "utf8");

const filesIn = (text: string): CaseFile[] => {
  const read: unknown = JSON.parse(text);
  return (Array.isArray(read) ? read : [read]).map((one) => caseFileSchema.parse(one));
};
const long = ["a.json", "b.json", "c.json"].flatMap((name) => filesIn(shipped(name)));
const short = filesIn(shipped("logbook.json"));

/** A case file gesture by gesture, and its chain read back. */
function standingOf({ caseId: named, gestures }: CaseFile): Standing {
  const caseId = known(named);
  let standing = beforeFirst(caseId);
  const changes = gestures.map(({ at, who, words, operations }) => {
    const next = advance(standing, { at, who, words, patches: patchesOf({ words, operations }, standing.parts) });
    standing = next.standing;
    return next.change;
  });
  expect(replay(caseId, changes).headHash).toBe(standing.headHash);
  return standing;
}

const standings = new Map<string, Standing>([...long, ...short].map((file) => [file.caseId, standingOf(file)]));
const parts = (caseId: string) => standings.get(caseId)?.parts ?? [];

describe("the demo's case files", () => {
  it("are what the generator makes from the list of films", () => {
    expect(Object.keys(made)).toEqual(["a.json", "b.json", "c.json", "logbook.json"]);
    for (const [name, text] of Object.entries(made))
      expect(shipped(name) === text, `${name}: run node scripts/demo/make-cases.mjs`).toBe(true);
  });

  it("all say that they are invented, and each is one case", () => {
    expect(long.map((file) => file.caseId)).toEqual(["demo-a", "demo-b", "demo-c"]);
    expect(short).toHaveLength(240);
    for (const [caseId, { parts: own }] of standings) expect(factsOf(known(caseId), own)?.demo).toBe(true);
  });

  it("go forward in time and never past the last day on which anybody was seen", () => {
    for (const { gestures } of [...long, ...short]) {
      const moments = gestures.map(({ at }) => at);
      expect(moments).toEqual([...moments].sort());
      expect((moments.at(-1) ?? "") < "2026-11-14").toBe(true);
    }
  });

  it("fit into the room that they are given", () => {
    expect(shipped("logbook.json").length).toBeLessThan(2_500_000);
  });
});

/** The limits of the first visit's vapour that are met at one end of the range of rates and not at the other. */
function limitsByRate(entries: readonly LedgerEntry[]): string[] {
  const sum = solventTopic.output.parse(entries.find(({ subject }) => subject === "solvent of visit-1")?.output);
  const open = sum.limits.filter(({ stands }) => stands === "dependsOnRate");
  return open.map(({ authority, averagingMin }) => `${authority} over ${averagingMin} min`);
}

describe("cases A, B and C", () => {
  it("are told in fifteen to thirty gestures", () => {
    for (const { gestures } of long) {
      expect(gestures.length).toBeGreaterThanOrEqual(existsSync(list) ? 15 : 12);
      expect(gestures.length).toBeLessThanOrEqual(30);
    }
  });

  it("name only parts that stand: films, visits, references and what claims are about", () => {
    for (const { caseId } of long) {
      const ids = new Set<string>(parts(caseId).map((part) => part.id));
      const named = [
        ...partsOf(parts(caseId), "visit").flatMap((visit) => visit.body.films),
        ...partsOf(parts(caseId), "recall").flatMap((recall) => recall.body.film ?? []),
        ...partsOf(parts(caseId), "mishap").flatMap((mishap) => mishap.body.visit ?? []),
        ...partsOf(parts(caseId), "claim").flatMap((claim) => [claim.body.about, ...claim.body.references]),
        ...partsOf(parts(caseId), "review").flatMap((review) => review.body.of ?? []),
        ...partsOf(parts(caseId), "mark").map((mark) => mark.body.film),
      ];
      for (const id of named) expect(ids.has(id), `${caseId}: ${id}`).toBe(true);
    }
  });

  it("leave no canal without an end to its filling, and every one of them filled", () => {
    for (const { caseId } of long) {
      const last = partsOf(parts(caseId), "visit").at(-1)?.body;
      for (const canal of last?.canals ?? []) {
        expect(canal.state).toBe("filled");
        expect(canal.fillingEndMm).toBeGreaterThanOrEqual(0);
        expect(canal.fillingEndMm).toBeLessThanOrEqual(2);
      }
    }
  });

  it("have a ledger in which no sum is refused, and every comparison waits for its films", () => {
    for (const { caseId } of long) {
      const source = { caseId, parts: parts(caseId), settings: firstSettings, at: "2026-11-14T00:00:00Z" };
      const waiting: string[] = [];
      const entries = deriveLedger({
        ...source,
        known: () => undefined,
        waits: ({ subject }) => waiting.push(subject),
      });
      expect(waiting).toEqual(partsOf(parts(caseId), "comparison").map(({ id }) => `compareFilms of ${id}`));
      const refused = entries.filter((entry) => entry.refused !== undefined && !waiting.includes(entry.subject));
      expect(refused.map((entry) => `${entry.subject}: ${entry.refused?.join("; ")}`)).toEqual([]);
      const summed = new Set(entries.map(({ subject }) => subject));
      const given = partsOf(parts(caseId), "visit").filter(({ body }) => body.anaesthetic.length > 0);
      for (const { id } of given) expect(summed.has(`anaesthetic of ${id}`), `${caseId} ${id}`).toBe(true);
      if (caseId === "demo-a") expect(limitsByRate(entries)).toEqual(["NIOSH (United States) over 60 min"]);
    }
  });
});

describe("the films of A, B and C", () => {
  const films = filmsOnList(rawList);
  const told = (listedAs: string) => parts(`demo-${listedAs.toLowerCase()}`);

  it("are those of the list, and lie beside it under the hash that the cases name", () => {
    for (const listed of films) {
      const bytes = readFileSync(join(root, "data/demo/films", listed.file));
      expect(createHash("sha256").update(bytes).digest("hex"), listed.file).toBe(listed.sha256);
      const film = partsOf(told(listed.case), "film").filter(({ body }) => body.hash === listed.sha256);
      expect(film, listed.file).toHaveLength(1);
    }
  });

  it("carry marks within the click's error of the truth", () => {
    for (const listed of films) {
      const film = partsOf(told(listed.case), "film").find(({ body }) => body.hash === listed.sha256);
      for (const { body } of partsOf(told(listed.case), "mark").filter((mark) => mark.body.film === film?.id)) {
        if (body.shape !== "trace") continue;
        const truth = listed.truth.canals[body.canal ?? "R"] ?? listed.truth.canals.D ?? [];
        const [end, trueEnd] = [body.points.at(-1), truth.at(-1)];
        const off = Math.hypot((end?.[0] ?? 0) - (trueEnd?.[0] ?? 0), (end?.[1] ?? 0) - (trueEnd?.[1] ?? 0));
        expect(off, `${listed.file} ${body.canal}`).toBeLessThan(4);
      }
    }
  });

  it("agree with the canal tables: working lengths are half a millimetre short of the true length, within half one", () => {
    for (const { case: listedAs, truth, magnification, detectorSpacingMm } of films)
      for (const [listedCanal, known] of Object.entries(truth.knownLengths ?? {})) {
        const canal = listedAs === "B" && listedCanal === "D" ? "DB" : listedCanal;
        const end = truth.canals[listedCanal]?.at(-1) ?? known.to;
        const beyondTip = Math.hypot(end[0] - known.to[0], end[1] - known.to[1]) * (detectorSpacingMm / magnification);
        const trueLengthMm = known.lengthMm + beyondTip;
        const rows = partsOf(told(listedAs), "visit").flatMap((visit) => visit.body.canals);
        for (const row of rows.filter((one) => one.canal === canal)) {
          expect(Math.abs((row.workingLengthMm ?? 0) - (trueLengthMm - 0.5)), `${listedAs} ${canal}`).toBeLessThan(0.5);
          expect(Math.abs((row.locatorMm ?? trueLengthMm) - trueLengthMm), `${listedAs} ${canal}`).toBeLessThan(0.6);
        }
      }
  });
});

describe("the logbook", () => {
  const facts = short.flatMap(({ caseId }) => factsOf(known(caseId), parts(caseId)) ?? []);
  const share = (some: readonly unknown[], all: readonly unknown[]): number => some.length / all.length;
  const recallsIn = (caseId: string) => partsOf(parts(caseId), "recall").map((recall) => recall.body);

  it("tells each tooth in four to eight gestures", () => {
    for (const { gestures } of short) expect([4, 5, 6, 7, 8]).toContain(gestures.length);
  });

  it("spreads over three years, harder towards the end", () => {
    const molars = facts.map(({ tooth }) => (tooth[1] ?? "") >= "6");
    const again = facts.map(({ treatment }) => treatment === "retreatment" || treatment === "surgery");
    const thirds = (marks: readonly boolean[]) =>
      [marks.slice(0, 80), marks.slice(160)].map((some) => share(some.filter(Boolean), some));
    for (const [early = 1, late = 0] of [thirds(molars), thirds(again)]) expect(late).toBeGreaterThan(early + 0.1);
    expect(facts.at(-1)?.presentedOn.slice(0, 7)).toBe("2025-09");
    expect(facts.filter(({ help }) => help === "alone").every(({ caseId }) => caseId > "demo-060")).toBe(true);
  });

  it("has a mishap in two to four of a hundred canals", () => {
    const canals = short.flatMap(({ caseId }) => partsOf(parts(caseId), "visit").at(-1)?.body.canals ?? []);
    const mishaps = short.flatMap(({ caseId }) => partsOf(parts(caseId), "mishap"));
    expect(share(mishaps, canals)).toBeGreaterThan(0.02);
    expect(share(mishaps, canals)).toBeLessThan(0.04);
  });

  it("ends its fillings within two millimetres of the apex in four of five canals and more", () => {
    const ends = short.flatMap(({ caseId }) =>
      (partsOf(parts(caseId), "visit").at(-1)?.body.canals ?? []).flatMap(({ fillingEndMm }) => fillingEndMm ?? []),
    );
    const within = ends.filter((end) => end >= 0 && end <= 2);
    expect(share(within, ends)).toBeGreaterThan(0.8);
    expect(share(within, ends)).toBeLessThan(0.95);
  });

  it("loses sight of about one tooth in five, and loses few", () => {
    const unseen = facts.filter(({ lastRecallOn }) => lastRecallOn === null);
    expect(share(unseen, facts)).toBeGreaterThan(0.15);
    expect(share(unseen, facts)).toBeLessThan(0.32);
    const lost = facts.filter(({ retained }) => retained === false);
    expect(lost.length).toBeGreaterThanOrEqual(3);
    expect(lost.length).toBeLessThanOrEqual(14);
    for (const { caseId } of lost) expect(recallsIn(caseId).at(-1)?.lostBecause).toBeTruthy();
  });

  it("is healthy on the last film after a year in 85 to 90 % without and 75 to 80 % with a lesion before", () => {
    const seenLate = short.flatMap(({ caseId }) => {
      const last = recallsIn(caseId).findLast((recall) => recall.readings.length > 0);
      const filledOn = partsOf(parts(caseId), "visit").at(-1)?.body.on;
      if (last === undefined || filledOn === undefined) return [];
      const days = (Date.parse(last.on) - Date.parse(filledOn)) / 86_400_000;
      const lesion = partsOf(parts(caseId), "findings")[0]?.body.onFilm.lucency === "apical";
      return days < 334 ? [] : [{ lesion, healthy: Math.max(...last.readings.map(({ score }) => score)) <= 2 }];
    });
    const healthy = (lesion: boolean) => {
      const group = seenLate.filter((one) => one.lesion === lesion);
      return share(
        group.filter((one) => one.healthy),
        group,
      );
    };
    expect(healthy(false)).toBeGreaterThan(0.85);
    expect(healthy(false)).toBeLessThan(0.9);
    expect(healthy(true)).toBeGreaterThan(0.75);
    expect(healthy(true)).toBeLessThan(0.8);
  });
});
