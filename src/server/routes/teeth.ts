import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { z } from "zod";
import { featuresOfTooth } from "../../core/tooth/missed-canal/features-of-tooth.ts";
import { teeth } from "../../core/tooth/teeth.ts";
import { usualRoots } from "../../core/tooth/usual-roots.ts";
import { toothNumber } from "../../record/values.ts";
import type { HiddenView } from "../api.ts";
import type { Bench } from "../bench.ts";

/** The 52 teeth in every notation; the usual roots and canals of one, and what may hide in it. */
export async function toothRoutes(plain: FastifyInstance, _bench: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  app.get("/api/teeth", () => teeth);
  app.get("/api/teeth/:tooth/usual", { schema: { params: z.object({ tooth: toothNumber }) } }, ({ params }) =>
    usualRoots(params.tooth),
  );
  app.get(
    "/api/teeth/:tooth/hidden",
    { schema: { params: z.object({ tooth: toothNumber }) } },
    ({ params }): HiddenView => ({
      tooth: params.tooth,
      features: teeth.filter(({ twoDigit }) => twoDigit === params.tooth).flatMap(featuresOfTooth),
    }),
  );
}
