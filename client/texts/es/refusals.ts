import type { RefusalWords } from "../en/refusals.ts";

const RELOAD = "Recarga la página e inténtalo de nuevo.";

/** What the atlas or the tune's schema refuses, in Spanish. */
export const refusalWords: RefusalWords = {
  statuses: {
    400: `El atlas no pudo leer la petición. ${RELOAD}`,
    401: "El atlas no lo reconoce: comprueba el recibo o la contraseña.",
    404: "El atlas no lo tiene, o ya no lo tiene.",
    405: `El atlas no lo acepta así. ${RELOAD}`,
    409: `Entretanto el atlas tiene otro estado. ${RELOAD}`,
    413: "Es más de lo que el atlas acepta de una vez.",
    414: "Es más largo de lo que el atlas acepta. Escribe menos.",
    415: `El atlas no lo acepta así. ${RELOAD}`,
    422: "El atlas no acepta algunos datos. Compruébalos.",
    429: "Al atlas le llega demasiado a la vez. Inténtalo de nuevo dentro de un minuto.",
    503: "El atlas está ocupado. Inténtalo de nuevo dentro de unos segundos.",
    507: "El atlas no tiene sitio ahora para ajustes nuevos. Envíalo más tarde; retirar sigue siendo posible.",
  },
  failed: "El atlas falló con esta petición. No es culpa tuya: inténtalo más tarde.",
  fields: {
    heat_kW: "Tamaño del calefactor",
    dose_uL: "Combustible por pulso",
    supply_V: "Tensión de alimentación",
    elevation_m: "Altitud",
    elevation_sd_m: "Incertidumbre de la altitud",
    lat: "Latitud",
    lon: "Longitud",
    temperature_C: "Temperatura",
    pressure_hPa: "Presión en el lugar",
    qnh_hPa: "Presión a nivel del mar (QNH)",
    humidity_pct: "Humedad",
    pump_Hz: "frecuencia de la bomba",
    fan_rpm: "velocidad del ventilador",
    co_ppm: "CO más bajo",
    co_below_ppm: "lectura más baja del medidor",
    power: "nivel de potencia",
    found: "Forma de búsqueda",
    kind: "Tipo de medidor",
    distance_m: "Distancia del medidor",
    tuned_on: "Mes",
    q: "Lugar",
  },
  codes: {
    missing: () => "falta.",
    invalid_type: () => "No se puede leer. Comprueba el número.",
    too_big: (limit) =>
      limit
        ? `Como máximo ${limit}. Comprueba el número y la unidad.`
        : "El valor no puede ser tan grande. Comprueba el número y la unidad.",
    too_small: (limit) =>
      limit
        ? `Como mínimo ${limit}. Comprueba el número y la unidad.`
        : "El valor no puede ser tan pequeño. Comprueba el número y la unidad.",
    not_multiple_of: (limit) => `Solo en pasos de ${limit || "0,5 kW"}.`,
    invalid_value: () => "Elige una de las opciones de la lista.",
    invalid_format: () => "No se puede leer así. Comprueba cómo está escrito.",
    unknown_field: () => `El atlas no conoce este dato. ${RELOAD}`,
  },
  together: {
    lat: "Da latitud y longitud juntas, o ninguna de las dos.",
    qnh_hPa: "Da una sola presión: la del lugar o la del nivel del mar.",
    co_ppm: "Da el CO o, si el medidor no muestra nada, su lectura más baja.",
  },
  of: (name, sentence) => `${name}: ${sentence}`,
};
