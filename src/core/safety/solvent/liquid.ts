/** How liquid becomes vapour while the air can hold more. */
export type Evaporation =
  | { readonly kind: "instant" }
  | { readonly kind: "constant" | "firstOrder"; readonly ratePerMin: number };

/** Liquid that is still there: of a constant evaporation each dose with its own rate, else all of it together. */
export interface Liquid {
  readonly pools: readonly { readonly mg: number; readonly mgPerMin: number }[];
}

/** No liquid. */
export const noLiquid: Liquid = { pools: [] };

/** How much liquid there is, mg. */
export const liquidMg = ({ pools }: Liquid): number => pools.reduce((sum, { mg }) => sum + mg, 0);

/** The vapour that the liquid would give a minute if the air could take it, mg/min. */
export function offeredMgPerMin(liquid: Liquid, evaporation: Evaporation): number {
  if (evaporation.kind === "firstOrder") return evaporation.ratePerMin * liquidMg(liquid);
  if (evaporation.kind === "instant") return liquidMg(liquid) > 0 ? Number.POSITIVE_INFINITY : 0;
  return liquid.pools.reduce((sum, { mgPerMin }) => sum + mgPerMin, 0);
}

/** The liquid with one more dose. */
export function withDose(liquid: Liquid, mg: number, evaporation: Evaporation): Liquid {
  if (mg === 0) return liquid;
  if (evaporation.kind === "constant")
    return { pools: [...liquid.pools, { mg, mgPerMin: mg * evaporation.ratePerMin }] };
  return { pools: [{ mg: liquidMg(liquid) + mg, mgPerMin: 0 }] };
}

/**
 * The liquid after some of it became vapour: of doses that evaporate side by side, each by its rate; one that is gone leaves.
 * Takes no more mg than make the first of them end.
 */
export function withoutVapour({ pools }: Liquid, mg: number, evaporation: Evaporation): Liquid {
  const rate = pools.reduce((sum, { mgPerMin }) => sum + mgPerMin, 0);
  const left = pools.map((pool) => ({
    ...pool,
    mg: pool.mg - (evaporation.kind === "constant" ? (mg * pool.mgPerMin) / rate : mg),
    gone: pool.mg * 1e-13,
  }));
  return {
    pools: left.filter((pool) => pool.mg > pool.gone).map(({ mg: rest, mgPerMin }) => ({ mg: rest, mgPerMin })),
  };
}

/** How much vapour may come before the first dose is gone, mg; without an end where a share of what is left goes. */
export function untilFirstGoneMg(liquid: Liquid, evaporation: Evaporation): number {
  if (evaporation.kind === "firstOrder") return Number.POSITIVE_INFINITY;
  if (evaporation.kind === "instant") return liquidMg(liquid);
  const rate = offeredMgPerMin(liquid, evaporation);
  return Math.min(...liquid.pools.map(({ mg, mgPerMin }) => (mg / mgPerMin) * rate));
}
