export function Scaling(_: { fit: unknown }) {
  return <p />;
}
