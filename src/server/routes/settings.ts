import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { settingsSchema } from "../../record/settings.ts";
import type { SessionView } from "../api.ts";
import type { Bench } from "../bench.ts";

/** What the person set, and what a window needs at its start. */
export async function settingsRoutes(plain: FastifyInstance, bench: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  app.get("/api/session", (): SessionView => {
    const { version, home, recovered } = bench;
    return { version, home, recovered, demo: bench.demo.state() };
  });
  app.get("/api/settings", () => bench.store.settings());
  app.put("/api/settings", { schema: { body: settingsSchema } }, async ({ body }) => {
    const before = await bench.store.settings();
    await bench.store.writeSettings(body);
    if (before.clickSigmaPx !== body.clickSigmaPx || before.stopShortMm !== body.stopShortMm) await refreshAll(bench);
    return body;
  });
}

/** Sums that rest on a setting follow it. */
async function refreshAll(bench: Bench): Promise<void> {
  const derive = await bench.deriveLedger();
  for (const { caseId } of await bench.store.cases()) await bench.store.refreshLedger(caseId, derive);
}
