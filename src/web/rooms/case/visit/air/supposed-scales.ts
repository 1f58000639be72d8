import type { Supposed } from "../../../../../ledger/visit-supposed.ts";

/** One thing that can be supposed: its scale from end to end, and how a place on it is a value. */
export interface SupposedScale {
  readonly name: keyof Supposed;
  readonly label: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  /** Places stand for powers of ten. */
  readonly isLog?: boolean;
}

/** The scales in their order; that of the volume and the room reaches past what is recorded. */
export const supposedScales = ({
  volumeMl = 0,
  roomM3 = 0,
  airChangesPerHour = 0,
}: Supposed): readonly SupposedScale[] => [
  {
    name: "volumeMl",
    label: "All doses together",
    unit: "ml",
    least: 0,
    most: Math.max(2, Math.ceil(2 * volumeMl)),
    step: 0.05,
  },
  { name: "recoveredFraction", label: "Share that suction takes", unit: "0 to 1", least: 0, most: 1, step: 0.05 },
  {
    name: "airChangesPerHour",
    label: "Fresh air: room volumes an hour",
    unit: "per h",
    least: 0,
    most: Math.max(45, airChangesPerHour),
    step: 1,
  },
  { name: "roomM3", label: "Volume of the room", unit: "m³", least: 5, most: Math.max(100, 2 * roomM3), step: 1 },
  {
    name: "ratePerMin",
    label: "Share that evaporates in a minute",
    unit: "per min",
    least: -2,
    most: 1,
    step: 0.05,
    isLog: true,
  },
];

/** Where a value stands on its scale. */
export const placeOf = ({ isLog, least, most }: SupposedScale, value: number): number =>
  isLog === true ? Math.min(most, Math.max(least, Math.log10(Math.max(value, 10 ** least)))) : value;

/** The value at a place of a scale, in three figures where places stand for powers of ten. */
export const valueAtPlace = ({ isLog, step }: SupposedScale, place: number): number =>
  isLog === true ? Number((10 ** place).toPrecision(3)) : Number((Math.round(place / step) * step).toFixed(6));
