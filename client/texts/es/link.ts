import type { linkWords as english } from "../en/link.ts";

export const linkWords: typeof english = {
  send: "Enviar esta respuesta",
  copy: "Copiar el enlace",
  copied: "El enlace está copiado.",
  copyByHand: "Cópialo de aquí:",
  label: "Enlace que contiene esta respuesta",
  holds:
    "Contiene la altitud, la noche, el calefactor y las unidades, y el lugar si lo elegiste por su nombre. No se envía al atlas; quien lo reciba puede leerlo.",
  ownTunes: (n) =>
    n === 1
      ? "Incluir mi propio ajuste en el enlace."
      : `Incluir mis ${n} ajustes propios en el enlace.`,
  withoutOwn: "Sin ellos se abre con la respuesta media para un calefactor así.",
  opened: "Abierto desde un enlace.",
  aside: "Tu propio calefactor y tu propia pregunta quedan como estaban.",
  take: "Preguntarlo para mi calefactor",
  leave: "Volver a lo mío",
  refused: (label, given, instead) =>
    `${label}: el enlace dice «${given}», y eso no puede ser. ${instead}`,
  instead: (value) => `Se usa ${value}.`,
  usual: "Se usa el valor habitual.",
  yourUnits: "Se usan tus propias unidades.",
  leftOut: "Se deja fuera.",
  labels: {
    lat: "Latitud",
    lon: "Longitud",
    elevation_sd_m: "Incertidumbre de la altitud",
    elevation_source: "Origen de la altitud",
    step_Hz: "Paso mínimo de la frecuencia de la bomba, Hz",
    step_rpm: "Paso mínimo de la velocidad del ventilador, rpm",
    end: "Potencia mínima o máxima",
    units: "Unidades",
    own: "Ajustes propios",
  },
};
