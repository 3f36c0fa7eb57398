import { saveFile } from "../base/save-file.ts";

/** Offers figures as a file of comma-separated values, made when asked for. */
export function CsvButton(props: { label: string; file: string; csv: () => string }) {
  const save = () => {
    saveFile(props.file, "text/csv;charset=utf-8", props.csv());
  };
  return (
    <div class="row">
      <button type="button" onClick={save}>
        {props.label}
      </button>
    </div>
  );
}
