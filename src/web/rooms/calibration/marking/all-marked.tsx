import { Button } from "../../../parts/button.tsx";
import { SayRefusal } from "../../../parts/say-refusal.tsx";
import { useShortcut } from "../../../parts/shortcuts.ts";
import { useFinishExercise } from "../../../record/calibration.ts";

/** Every place is marked twice; what is left is to work it out. */
export function AllMarked({ id }: { readonly id: string }) {
  const finish = useFinishExercise(id);
  const work = () => !finish.isPending && finish.mutate();
  useShortcut("w", "Exercise", "Work out the click error", work);
  return (
    <main className="marking-done">
      <h2>Every place is marked twice</h2>
      <p>Once it is worked out the exercise stays as it is. The last mark can still be taken back.</p>
      {finish.error && <SayRefusal of={finish.error} />}
      <Button weight="strong" hint="w" disabled={finish.isPending} onClick={work}>
        Work it out
      </Button>
    </main>
  );
}
