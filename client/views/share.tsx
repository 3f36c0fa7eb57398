export function Share(_: { fit: unknown; onShared: () => Promise<void> }) {
  return <p />;
}
