import { randomUUID } from "node:crypto";
import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { z } from "zod";
import { ledgerAsStood } from "../../ledger/ledger-as-stood.ts";
import { gestureSchema } from "../../record/change.ts";
import type { LedgerEntry } from "../../record/ledger-entry.ts";
import type { CaseState } from "../../store/store.ts";
import { newCaseSchema } from "../api.ts";
import { type Bench, recordingOf } from "../bench.ts";
import { caseView, changeLine } from "../case-view.ts";

const named = z.object({ caseId: z.string().regex(/^[a-z0-9-]{3,64}$/) });

/** Cases: the list, one whole, its gestures, its history. */
export async function caseRoutes(plain: FastifyInstance, bench: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  const { store } = bench;

  app.get("/api/cases", () => store.cases());
  app.post("/api/cases", { schema: { body: newCaseSchema } }, async ({ body }) => {
    const caseId = `case-${randomUUID().slice(0, 13)}`;
    const operations = [{ op: "put" as const, id: "about", kind: "case", baseRevision: 0, body: body.case }];
    const words = `Case ${body.case.pseudonym}, tooth ${body.case.tooth}, opened`;
    return caseView(store, await store.createCase(caseId, { words, operations }, await recordingOf(bench)));
  });
  app.get("/api/cases/:caseId", { schema: { params: named } }, async ({ params }) =>
    caseView(store, await store.readCase(params.caseId)),
  );
  app.delete("/api/cases/:caseId", { schema: { params: named } }, async ({ params }) => {
    const tombstone = await store.removeCase(params.caseId, await recordingOf(bench));
    await bench.comparisons.sweep();
    return tombstone;
  });
  app.post(
    "/api/cases/:caseId/gestures",
    { schema: { params: named, body: gestureSchema } },
    async ({ params, body }) => caseView(store, await store.record(params.caseId, body, await recordingOf(bench))),
  );
  historyRoutes(plain, bench);
}

function historyRoutes(plain: FastifyInstance, bench: Bench): void {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  const { store } = bench;
  // The change that the person saw at the top: another one there by now is a conflict, never taken back unseen.
  const seen = z.strictObject({ sequence: z.int().min(1) }).nullish();
  for (const way of ["undo", "redo"] as const)
    app.post(`/api/cases/:caseId/${way}`, { schema: { params: named, body: seen } }, async ({ params, body }) =>
      caseView(store, await store[way](params.caseId, await recordingOf(bench), body?.sequence)),
    );
  app.get("/api/cases/:caseId/changes", { schema: { params: named } }, async ({ params }) =>
    (await store.changes(params.caseId)).map(changeLine),
  );
  const then = named.extend({ sequence: z.coerce.number().int().min(1) });
  app.get("/api/cases/:caseId/at/:sequence", { schema: { params: then } }, async ({ params }) => {
    const state = await store.readCaseAt(params.caseId, params.sequence);
    const { undo: _undo, redo: _redo, ...view } = await caseView(store, state, await stoodLedger(bench, state));
    return view;
  });
}

async function stoodLedger(
  { store, now, sums }: Bench,
  { caseId, parts, sequence }: CaseState,
): Promise<LedgerEntry[]> {
  const [settings, kept, changes] = await Promise.all([
    store.settings(),
    store.keptLedger(caseId),
    store.changes(caseId),
  ]);
  const until = changes.find((change) => change.sequence === sequence + 1)?.at;
  const past = { caseId, parts, settings, kept, at: now(), ...(until === undefined ? {} : { until }) };
  return ledgerAsStood(past, sums.do);
}
