import type { FastifyInstance } from "fastify";
import type { Bench } from "../bench.ts";

/** The demo: loaded at the first start, removable with one press. */
export async function demoRoutes(app: FastifyInstance, bench: Bench): Promise<void> {
  app.post("/api/demo", async () => {
    await bench.demo.load();
    // Nobody waits for it: what is not compared yet says so.
    void bench.comparisons.catchUp().catch(() => undefined);
    return { demo: bench.demo.state() };
  });
  app.delete("/api/demo", async () => {
    await bench.demo.remove();
    await bench.comparisons.sweep();
    return { demo: bench.demo.state() };
  });
}
