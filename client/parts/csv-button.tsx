/** Offers figures as a file of comma-separated values, made when asked for. */
export function CsvButton(props: { label: string; file: string; csv: () => string }) {
  const save = () => {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([props.csv()], { type: "text/csv;charset=utf-8" }));
    link.download = props.file;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 1000);
  };
  return (
    <div class="row">
      <button type="button" onClick={save}>
        {props.label}
      </button>
    </div>
  );
}
