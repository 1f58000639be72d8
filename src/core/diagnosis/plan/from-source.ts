import { markOf } from "./plan-sources.ts";

/** A row's source with its mark; the row's own mark where it has one. */
export const fromSource = (source: string, mark = markOf(source)) => ({ source, mark });
