import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { z } from "zod";
import { type FilmImported, filmImportSchema } from "../api.ts";
import { type Bench, recordingOf } from "../bench.ts";
import { caseView } from "../case-view.ts";
import { previewsOf } from "../previews.ts";
import { takeInFilm } from "../take-in-film.ts";

/** The largest file that is taken in as a film. */
const filmLimit = 256 * 1024 * 1024;

/** Films: taken in whole, kept by content, given back as 16-bit pictures. */
export async function filmRoutes(plain: FastifyInstance, bench: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  app.addContentTypeParser(
    "application/octet-stream",
    { parseAs: "buffer", bodyLimit: filmLimit },
    (_request, body, done) => done(null, body),
  );

  const named = z.object({ caseId: z.string().regex(/^[a-z0-9-]{3,64}$/) });
  const schema = { params: named, querystring: filmImportSchema, body: z.instanceof(Uint8Array) };
  app.post(
    "/api/cases/:caseId/films",
    { schema, bodyLimit: filmLimit },
    async ({ params, query, body }): Promise<FilmImported> => {
      await bench.store.readCase(params.caseId);
      const { partId, gesture } = await takeInFilm(bench, body, query);
      return {
        partId,
        case: await caseView(bench.store, await bench.store.record(params.caseId, gesture, await recordingOf(bench))),
      };
    },
  );

  const kept = z.object({ hash: z.string().regex(/^[0-9a-f]{64}$/) });
  app.get("/api/films/:hash", { schema: { params: kept } }, async ({ params }, reply) =>
    reply
      .header("Cache-Control", forever)
      .type("image/png")
      .send(await bench.store.readFilm(params.hash)),
  );
  const small = z.object({ width: z.coerce.number().int().min(16).max(2_000).default(320) });
  const preview = previewsOf(bench.store, bench.films);
  app.get(
    "/api/films/:hash/preview",
    { schema: { params: kept, querystring: small } },
    async ({ params, query }, reply) =>
      reply
        .header("Cache-Control", forever)
        .type("image/png")
        .send(await preview(params.hash, query.width)),
  );
}

/** A film's bytes never change under their hash. */
const forever = "private, max-age=31536000, immutable";
