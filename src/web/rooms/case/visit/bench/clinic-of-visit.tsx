import { Link } from "wouter";
import { useSettings } from "../../../../record/readings.ts";
import { TakeClinic } from "../take-clinic.tsx";
import { useBench } from "./use-bench.ts";

/** What the clinic has settled is taken into the visit once, so that a later setting changes no past sum. */
export function ClinicOfVisit() {
  const { visit, readOnly } = useBench("Clinic's settings");
  const settings = useSettings().data;
  if (visit.clinic !== undefined || readOnly || settings === undefined) return null;
  const { clinic } = settings;
  if (clinic === undefined || Object.keys(clinic).length === 0)
    return (
      <p className="quiet bench-line">
        The clinic&apos;s room and limits are not set. <Link href="/settings">Set them once</Link>
      </p>
    );
  return (
    <p className="quiet bench-line">
      This visit does not have the clinic&apos;s room and limits.
      <TakeClinic />
    </p>
  );
}
