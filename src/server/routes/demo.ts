import type { FastifyInstance } from "fastify";
import type { Bench } from "../bench.ts";

/** The demo: loaded at the first start, removable with one press. */
export async function demoRoutes(app: FastifyInstance, bench: Bench): Promise<void> {
  app.post("/api/demo", async () => {
    await bench.demo.load();
    return { demo: bench.demo.state() };
  });
  app.delete("/api/demo", async () => {
    await bench.demo.remove();
    return { demo: bench.demo.state() };
  });
}
