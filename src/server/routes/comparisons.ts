import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { z } from "zod";
import type { Job } from "../api.ts";
import type { Bench } from "../bench.ts";
import { pictureNames } from "../comparing/comparing.ts";

/** Films compared: started as long work with progress, and their pictures. */
export async function comparisonRoutes(plain: FastifyInstance, bench: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  const id = z.string().regex(/^[a-z0-9-]{3,64}$/);
  const ofCase = z.object({ caseId: id, partId: id });
  app.post(
    "/api/cases/:caseId/comparisons/:partId",
    { schema: { params: ofCase } },
    ({ params }): Promise<Job> => bench.comparisons.start(params.caseId, params.partId),
  );
  const picture = z.object({ entryId: z.string().regex(/^[0-9a-f]{64}$/), picture: z.enum(pictureNames) });
  app.get("/api/comparisons/:entryId/:picture", { schema: { params: picture } }, async ({ params }, reply) =>
    reply
      .header("Cache-Control", forever)
      .type("image/png")
      .send(await bench.comparisons.picture(params.entryId, params.picture)),
  );
  app.delete("/api/jobs/:jobId", { schema: { params: z.object({ jobId: z.uuid() }) } }, ({ params }) =>
    bench.jobs.stop(params.jobId),
  );
}

/** An entry never changes, and its pictures are what its films give. */
const forever = "private, max-age=31536000, immutable";
