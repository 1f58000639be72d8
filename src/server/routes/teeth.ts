import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { z } from "zod";
import { teeth } from "../../core/tooth/teeth.ts";
import { usualRoots } from "../../core/tooth/usual-roots.ts";
import { toothNumber } from "../../record/values.ts";
import type { Bench } from "../bench.ts";

/** The 52 teeth in every notation, and the usual roots and canals of one. */
export async function toothRoutes(plain: FastifyInstance, _bench: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  app.get("/api/teeth", () => teeth);
  app.get("/api/teeth/:tooth/usual", { schema: { params: z.object({ tooth: toothNumber }) } }, ({ params }) =>
    usualRoots(params.tooth),
  );
}
