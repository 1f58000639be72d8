import { timingSafeEqual } from "node:crypto";
import type { FastifyInstance } from "fastify";
import { Refusal } from "../../core/refusal.ts";
import type { Bench } from "../bench.ts";

/** A second start asks the first for a fresh address; it shows the key from the data folder, which no page can read. */
export async function doorRoutes(app: FastifyInstance, bench: Bench): Promise<void> {
  app.post("/door", (request) => {
    const shown = Buffer.from(String(request.headers["x-door-key"] ?? ""));
    const key = Buffer.from(bench.doorKey);
    if (shown.length !== key.length || !timingSafeEqual(shown, key))
      throw new Refusal("server.forbidden", "Cannot give an address: the key is not that of this server");
    return { code: bench.sessions.newCode() };
  });
}
