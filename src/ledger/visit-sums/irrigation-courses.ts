import type { BodyOf } from "../../record/parts.ts";
import { byMinute, type Placed } from "./by-minute.ts";

type Visit = BodyOf<"visit">;

/** The irrigants that reached one canal of a visit, in their order; without a canal, those that reached the canals no row names. */
export interface IrrigationCourse {
  readonly canal?: string;
  readonly rows: readonly Placed<Visit["irrigation"][number]>[];
}

/** Canal by canal where rows name canals, each with the rows that name none; beside them those alone, unless every canal is named. */
export function irrigationCourses({ irrigation, canals }: Pick<Visit, "irrigation" | "canals">): IrrigationCourse[] {
  const rows = byMinute(irrigation);
  const named = [...new Set(rows.flatMap(({ row }) => row.canal ?? []))];
  const inAll = rows.filter(({ row }) => row.canal === undefined);
  const ofCanals = named.map((canal) => ({
    canal,
    rows: rows.filter(({ row }) => row.canal === undefined || row.canal === canal),
  }));
  const isEachNamed = canals.length > 0 && canals.every(({ canal }) => named.includes(canal));
  return inAll.length === 0 || isEachNamed ? ofCanals : [{ rows: inAll }, ...ofCanals];
}
