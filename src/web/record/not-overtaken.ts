import type { QueryClient, QueryKey } from "@tanstack/react-query";

/**
 * Reads what stands, and reads again where an answer to a gesture was taken meanwhile: an answer that was on its way before a gesture was
 * recorded would put what stood before it back on the screen, and the next gesture would be made on that.
 */
export async function notOvertaken<View>(
  client: QueryClient,
  queryKey: QueryKey,
  read: () => Promise<View>,
): Promise<View> {
  const taken = () => client.getQueryState(queryKey)?.dataUpdateCount;
  const before = taken();
  const view = await read();
  return taken() === before ? view : notOvertaken(client, queryKey, read);
}
