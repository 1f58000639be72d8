import { chiSquareTail } from "../radiograph/chi-square-tail.ts";
import { reach95 } from "../radiograph/interval-around.ts";
import { type Fault, Refusal } from "../refusal.ts";
import type { FractureInput } from "./fracture-input.ts";
import type { InstrumentShape } from "./instrument-shape.ts";
import { diameterSigmaOf, lengthFromWidth } from "./length-from-width.ts";
import type { Measured } from "./measured.ts";

type Fragment = FractureInput["fragment"];

/** A measure as the length that it gives. */
export interface LengthOf extends Measured {
  readonly name: keyof Fragment;
}

/** Where an instrument broke, in mm from its tip. */
export interface BrokenPlace extends Measured {
  readonly measures: readonly LengthOf[];
  /** The chance that measures of one place lie as far apart; below 0.05 they contradict each other. */
  readonly agree: number;
}

/** The place of a break, and what of the measures could not be used. */
export interface PlaceReading {
  readonly place?: BrokenPlace;
  readonly unused: readonly { readonly name: string; readonly why: string }[];
}

/**
 * Where an instrument broke by what was measured of the piece and of what is left.
 * Takes the fragment and the shape; gives no place where nothing was measured.
 * @throws Refusal `input.impossible` for a piece longer than its instrument or a broken end of a width that the instrument
 * has nowhere; `input.notDeterminable` where the only measure tells no length, as a width without a taper.
 * @source least squares (plane algebra); R. T. Birge, Phys Rev 1932;40:207-227 (memory); docs/methods/fracture.md C1
 */
export function brokenPlace(fragment: Fragment, shape: InstrumentShape): PlaceReading {
  const faults = placeFaults(fragment, shape);
  if (faults.length > 0)
    throw new Refusal(
      "input.impossible",
      "Cannot explain the break: the piece can't be of this instrument",
      {},
      faults,
    );
  const readings = [ofLength(fragment), ofRemaining(fragment, shape), ofWidth(fragment, shape)].flat();
  const measures = readings.flatMap((one) => ("why" in one ? [] : [one]));
  const unused = readings.flatMap((one) => ("why" in one ? [one] : []));
  if (measures.length > 0) return { place: together(measures), unused };
  if (unused.length === 0) return { unused };
  const blind = unused.map(({ name, why }) => ({ path: `fragment.${name}`, says: why }));
  throw new Refusal("input.notDeterminable", "Cannot tell where it broke: no measure gives a length", {}, blind);
}

type Reading = LengthOf | { readonly name: keyof Fragment; readonly why: string };

const ofLength = ({ lengthMm }: Fragment): Reading[] =>
  lengthMm === undefined ? [] : [{ name: "lengthMm", ...lengthMm }];

function ofRemaining({ remainingLengthMm: left }: Fragment, { lengthMm }: InstrumentShape): Reading[] {
  if (left === undefined) return [];
  const name = "remainingLengthMm";
  if (lengthMm === undefined)
    return [{ name, why: "instrument.lengthMm is absent; with it the piece is what is missing" }];
  return [{ name, value: Math.max(0, lengthMm - left.value), sigma: left.sigma }];
}

function ofWidth({ brokenEndDiameterMm: width }: Fragment, shape: InstrumentShape): Reading[] {
  if (width === undefined) return [];
  const name = "brokenEndDiameterMm";
  const length = lengthFromWidth(shape, width, diameterSigmaOf(shape));
  if (length !== undefined) return [{ name, ...length }];
  const why = `${width.value} mm is had at more than one place, as without a taper; measure the length itself`;
  return [{ name, why }];
}

function placeFaults(fragment: Fragment, shape: InstrumentShape): Fault[] {
  const { lengthMm: length, remainingLengthMm: left, brokenEndDiameterMm: width } = fragment;
  return [
    ...longerThan(length, shape, "fragment.lengthMm"),
    ...longerThan(left, shape, "fragment.remainingLengthMm"),
    ...(width === undefined ? [] : widthFaults(width, shape)),
  ];
}

function longerThan(measured: Measured | undefined, { lengthMm }: InstrumentShape, path: string): Fault[] {
  if (measured === undefined || lengthMm === undefined || measured.value <= lengthMm + reach95 * measured.sigma)
    return [];
  return [{ path, says: `${measured.value} is longer than the instrument, ${lengthMm} mm` }];
}

function widthFaults(width: Measured, shape: InstrumentShape): Fault[] {
  const path = "fragment.brokenEndDiameterMm";
  const diameters = shape.stations.map(({ diameterMm }) => diameterMm);
  const [least, most] = [Math.min(...diameters), Math.max(...diameters)];
  const reach = reach95 * Math.hypot(width.sigma, diameterSigmaOf(shape));
  if (width.value < least - reach)
    return [{ path, says: `${width.value} is thinner than the tip, ${least.toFixed(2)} mm` }];
  if (width.value > most + reach)
    return [{ path, says: `${width.value} is thicker than the instrument anywhere, ${most.toFixed(2)} mm` }];
  return [];
}

/** One place from several measures, each by how sure it is; measures that disagree make it less sure. */
function together(measures: readonly LengthOf[]): BrokenPlace {
  const weights = measures.map(({ sigma }) => 1 / sigma ** 2);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const value = measures.reduce((sum, one, index) => sum + one.value * (weights[index] ?? 0), 0) / total;
  const squares = measures.reduce((sum, one) => sum + ((one.value - value) / one.sigma) ** 2, 0);
  const freedom = measures.length - 1;
  const wider = freedom === 0 ? 1 : Math.max(1, Math.sqrt(squares / freedom));
  const agree = freedom === 0 ? 1 : chiSquareTail(squares, freedom);
  return { value, sigma: wider / Math.sqrt(total), measures, agree };
}
