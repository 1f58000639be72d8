import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
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
    const next = wishedSettings(await bench.store.settings(), body);
    await writeSettings(bench, next);
    return next;
  });
}
