import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { z } from "zod";
import { whatIfAnswers } from "../../ledger/what-if-answers.ts";
import { type WhatIfView, whatIfSchema } from "../api.ts";
import type { Bench } from "../bench.ts";

const named = z.object({ caseId: z.string().regex(/^[a-z0-9-]{3,64}$/) });

/** What sums of a case would say if something were otherwise; nothing is recorded. */
export async function whatIfRoutes(plain: FastifyInstance, { store, sums }: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  app.post(
    "/api/cases/:caseId/what-if",
    { schema: { params: named, body: whatIfSchema } },
    async ({ params, body }): Promise<WhatIfView> => {
      const [{ parts }, settings] = await Promise.all([store.readCase(params.caseId), store.settings()]);
      return { answers: await whatIfAnswers(sums.do, { parts, settings }, body.asks) };
    },
  );
}
