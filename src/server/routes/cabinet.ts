import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { z } from "zod";
import { cabinetGestureSchema } from "../../record/cabinet/cabinet-gesture.ts";
import { type Bench, recorderOf } from "../bench.ts";
import { cabinetView } from "../cabinet-view.ts";
import { changeLine } from "../case-view.ts";

/** The clinic's cabinet: what stands, its gestures, its history. */
export async function cabinetRoutes(plain: FastifyInstance, bench: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  const { store } = bench;
  app.get("/api/cabinet", async () => cabinetView(store, await store.cabinet()));
  app.post("/api/cabinet/gestures", { schema: { body: cabinetGestureSchema } }, async ({ body }) =>
    cabinetView(store, await store.recordInCabinet(body, await recorderOf(bench))),
  );
  // The change that the person saw at the top: another one there by now is a conflict, never taken back unseen.
  const seen = { schema: { body: z.strictObject({ sequence: z.int().min(1) }).nullish() } };
  app.post("/api/cabinet/undo", seen, async ({ body }) =>
    cabinetView(store, await store.undoInCabinet(await recorderOf(bench), body?.sequence)),
  );
  app.post("/api/cabinet/redo", seen, async ({ body }) =>
    cabinetView(store, await store.redoInCabinet(await recorderOf(bench), body?.sequence)),
  );
  app.get("/api/cabinet/changes", async () => (await store.cabinetChanges()).map(changeLine));
}
