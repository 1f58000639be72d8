import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { FastifyInstance } from "fastify";
import type { ZodTypeProvider } from "fastify-type-provider-zod";
import { z } from "zod";
import { topicList } from "../../ledger/topic-list.ts";
import type { TopicView } from "../api.ts";
import type { Bench } from "../bench.ts";

/** Computations by name with their method pages, and single entries of the ledger. */
export async function topicRoutes(plain: FastifyInstance, bench: Bench): Promise<void> {
  const app = plain.withTypeProvider<ZodTypeProvider>();
  app.get("/api/topics", (): Promise<TopicView[]> => Promise.all(topicList().map((topic) => withMethod(topic, bench))));
  const entry = z.object({ entryId: z.string().regex(/^[0-9a-f]{64}$/) });
  app.get("/api/ledger/:entryId", { schema: { params: entry } }, ({ params }) =>
    bench.store.ledgerEntry(params.entryId),
  );
}

async function withMethod(topic: ReturnType<typeof topicList>[number], bench: Bench): Promise<TopicView> {
  const page = join(bench.shipped, "docs", "methods", `${topic.page}.md`);
  const { name, version, summary, sources } = topic;
  return { name, version, summary, sources, method: await readFile(page, "utf8") };
}
