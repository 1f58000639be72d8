import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { z } from "zod";
import { documentKinds } from "../../record/document-kind.ts";
import type { DocumentRow } from "../../store/document-row.ts";
import type { DocumentView, Job } from "../api.ts";
import type { Bench } from "../bench.ts";
import { writeDocument } from "../write-document.ts";

const mediaTypes = {
  deck: "application/vnd.openxmlformats-officedocument.presentationml.presentation",
  handout: "application/pdf",
  consent: "application/pdf",
  piece: "application/pdf",
  letter: "application/pdf",
} as const;

/** Documents: made as long work with progress, kept, and given back. */
export async function documentRoutes(plain: FastifyInstance, bench: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  const ofCase = z.object({ caseId: z.string().regex(/^[a-z0-9-]{3,64}$/) });
  const asked = z.strictObject({ as: z.enum(documentKinds) });
  app.post(
    "/api/cases/:caseId/documents",
    { schema: { params: ofCase, body: asked } },
    ({ params, body }): Job =>
      bench.jobs.start("Reading the case", async (progress) => {
        const row = await writeDocument(bench, { caseId: params.caseId, as: body.as }, progress);
        return { documentId: row.id };
      }),
  );
  app.get(
    "/api/cases/:caseId/documents",
    { schema: { params: ofCase } },
    async ({ params }): Promise<DocumentView[]> => (await bench.store.documents(params.caseId)).map(documentView),
  );
  app.get("/api/jobs/:jobId", { schema: { params: z.object({ jobId: z.uuid() }) } }, ({ params }) =>
    bench.jobs.read(params.jobId),
  );
  const one = z.object({ id: z.string().regex(/^[a-z0-9-]{3,64}$/) });
  app.get("/api/documents/:id", { schema: { params: one } }, async ({ params }) =>
    documentView((await bench.store.readDocument(params.id)).row),
  );
  app.get("/api/documents/:id/file", { schema: { params: one } }, async ({ params }, reply) => {
    const { row, bytes } = await bench.store.readDocument(params.id);
    return reply
      .type(mediaTypes[row.as])
      .header("Content-Disposition", `attachment; filename="${row.fileName}"`)
      .send(bytes);
  });
}

const documentView = ({ caseId: _caseId, sha256: _sha256, ...view }: DocumentRow): DocumentView => view;
