import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { Refusal } from "../../core/refusal.ts";
import { clinicFaults } from "../../record/clinic-faults.ts";
import { settingsSchema, wishedSettings } from "../../record/settings.ts";
import type { SessionView } from "../api.ts";
import type { Bench } from "../bench.ts";
import { writeSettings } from "../write-settings.ts";

/** What the person set, and what a window needs at its start. */
export async function settingsRoutes(plain: FastifyInstance, bench: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  app.get("/api/session", (): SessionView => {
    const { version, home, recovered } = bench;
    return { version, home, recovered, demo: bench.demo.state() };
  });
  app.get("/api/settings", () => bench.store.settings());
  app.put("/api/settings", { schema: { body: settingsSchema } }, async ({ body }) => {
    const faults = clinicFaults(body.clinic ?? {}).map(({ path, says }) => ({ path: `clinic.${path}`, says }));
    if (faults.length > 0)
      throw new Refusal("input.impossible", "Cannot keep the settings: what the clinic set can't be", {}, faults);
    const next = wishedSettings(await bench.store.settings(), body);
    await writeSettings(bench, next);
    return next;
  });
}
