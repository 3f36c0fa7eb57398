/** What each line stands for: its dash pattern with its label. */
export function LineKey({ labels }: { labels: readonly string[] }) {
  return (
    <ul class="chart-key line-key">
      {labels.map((label, number) => (
        <li key={label}>
          <svg viewBox="0 0 48 16" aria-hidden="true">
            <path class={`study-line-${number}`} d="M0 8H48" />
          </svg>
          {label}
        </li>
      ))}
    </ul>
  );
}
