import { useAnnounce } from "../../../parts/announcer.tsx";
import { Button } from "../../../parts/button.tsx";
import { useField } from "../../../parts/fields/editing.tsx";
import { useSettingsAnew } from "../../../record/readings.ts";

/** Copies what the clinic has set into the visit, which keeps it whatever is set later; read anew, as another window may have saved since. */
export function TakeClinic({ weight = "plain" }: { readonly weight?: "plain" | "strong" }) {
  const field = useField("clinic", "Clinic's settings");
  const announce = useAnnounce();
  const settingsAnew = useSettingsAnew();
  const take = () =>
    settingsAnew().then(
      ({ clinic }) => clinic !== undefined && field.write(clinic, "taken for this visit", "now"),
      (error: unknown) => announce(error instanceof Error ? error.message : String(error)),
    );
  return (
    <Button weight={weight} onClick={() => void take()}>
      Take the clinic&apos;s settings
    </Button>
  );
}
