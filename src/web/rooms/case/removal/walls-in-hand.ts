import { hasThinWall } from "../../../../record/has-thin-wall.ts";
import { removalPart } from "../../../../record/parts/removal.ts";
import { useEditedPart, useField } from "../../../parts/fields/editing.tsx";

const { canalDiameterMm: canalForm, walls: wallsForm, thinnestAlong: wayForm } = removalPart.body.shape;

/** Whether a wall is thinner than the canal as both are being written, and whether a person stands by such walls. */
export function useWallsInHand() {
  const part = useEditedPart();
  const recorded = part.kind === "removal" ? part.body : undefined;
  const canal = useField("canalDiameterMm", "Canal beside its top");
  const walls = useField("walls", "Walls at the top of the piece");
  const along = useField("thinnestAlong", "Thinnest dentine between the orifice and the piece");
  const confirmed = useField("wallsConfirmed", "Walls confirmed");
  // What is half typed has no form yet; until it has, what is recorded stands.
  const [canalNow, wallsNow, wayNow] = [
    canalForm.safeParse(canal.value),
    wallsForm.safeParse(walls.value),
    wayForm.safeParse(along.value),
  ];
  const hasThin = hasThinWall({
    canalDiameterMm: canalNow.success ? canalNow.data : recorded?.canalDiameterMm,
    walls: wallsNow.success ? wallsNow.data : recorded?.walls,
    thinnestAlong: wayNow.success ? wayNow.data : recorded?.thinnestAlong,
  });
  return { hasThin, isConfirmed: confirmed.value === true };
}
