import { Button } from "../../parts/button.tsx";

/** The light box before its first film. */
export const NoFilms = ({ open }: { readonly open: () => void }) => (
  <main className="no-films">
    <h1>No films yet</h1>
    <p>
      Drop a film here, paste one, or open a file: DICOM, PNG, JPEG, TIFF or BMP. A picture that holds several films can
      be taken in part by part. Nothing that a file says about a person is kept, and nothing leaves this machine.
    </p>
    <Button weight="strong" hint="F" onClick={open}>
      Open a film
    </Button>
  </main>
);
