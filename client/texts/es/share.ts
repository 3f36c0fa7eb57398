import { format } from "../../units.ts";

/** The Share view, in Spanish. */
export const shareWords: typeof import("../en/share.ts").shareWords = {
  title: "Compartir un ajuste",
  intro:
    "Lo que encontraste con el medidor, para que el siguiente empiece más cerca. Sin cuenta ni nombre: un lugar se convierte en una celda del mapa de unos 250 km² antes de enviar nada.",
  whereTuned: "Dónde ajustaste",
  thisPosition: "la ubicación de este dispositivo",
  sentPosition: (lat: string, lon: string) =>
    `Se envía el centro de su celda del mapa, cerca de ${lat}, ${lon}: nada más preciso sale de este navegador.`,
  withoutPosition: "No enviar ningún lugar",
  pump: "Frecuencia de la bomba, Hz",
  fan: "Velocidad del ventilador, rpm",
  co: "CO más bajo, ppm",
  coHint: "La lectura estable más baja a esta potencia.",
  highCo: (end: string, ppm: string, usual: string) =>
    `${end}: ${ppm} ppm es mucho. Lo habitual es menos de ${usual} (práctica común, sin fuente).`,
  highCoCauses:
    "Causas habituales: hollín en el quemador, toma de aire obstruida, una fuga en el escape, el medidor demasiado cerca del escape. Revísalas. Si sigue alto, haz revisar el calefactor antes de que alguien duerma a su lado.",
  coBelow: "El medidor no muestra nada: el CO queda por debajo de su lectura más baja",
  coFloor: "Lectura más baja que puede mostrar, ppm",
  power: "Nivel de potencia, un simple número (opcional)",
  doseHint: "Si lo sabes: está en la etiqueta de la bomba, o lo has medido. Opcional.",
  found: "¿Cómo encontraste este ajuste?",
  foundWays: {
    bracketed: "Pasé la lectura más baja por ambos lados",
    "stopped early": "Paré antes",
    "as suggested": "Lo dejé en los ajustes sugeridos",
  },
  foundUnknown: "No lo sé",
  foundHint:
    "Por ambos lados: el CO volvió a subir con un ajuste más pobre y con uno más rico, a la potencia mínima y a la máxima. Un ajuste solo copiado no dice nada nuevo al atlas.",
  meter: "Medidor y mes (opcional)",
  meterKind: "Tipo de medidor",
  meterDistance: "Distancia a la salida del escape, m",
  month: "Mes del ajuste",
  monthHint: "Año y mes, por ejemplo 2026-10.",
  supply: "Tensión de alimentación, V (opcional)",
  notGiven: "sin indicar",
  missing: "Rellena este campo.",
  missingCo: "Escribe la lectura, o marca que el medidor no muestra nada.",
  missingFloor: "Escribe la lectura más baja que puede mostrar el medidor.",
  badCo: `Una lectura de 0 a ${format(10_000)} ppm, por favor.`,
  consent:
    "Doy este ajuste a todo el mundo con CC0 1.0: cualquiera puede usarlo para lo que sea, sin nombrarme.",
  needConsent: "Márcalo para compartir: el atlas se compone de datos abiertos.",
  send: "Enviar el ajuste",
  sendAsIs: "Enviarlo así de todos modos",
  sendRevision: "Enviar la corrección",
  sending: "Enviando …",
  cancelRevision: "Dejarlo como estaba",
  revising: "Corregir un ajuste compartido",
  fix: "Revisa los campos marcados.",
  slips: "Antes de enviar: parece un error al teclear",
  use: (value: string) => `Usar ${value}`,
  useAll: (n: number) => `Usar las ${n} sugerencias`,
  sendAnyway: "Puedes enviarlo así: se guarda, pero no cuenta.",
  accepted: "Aceptado",
  held: "Retenido",
  removed: "Quitado por quien cuida el atlas; nadie más lo ve",
  acceptedMeans:
    "Aceptado significa verosímil al lado de otros ajustes. No significa que sea seguro.",
  countsFrom: (day: string) =>
    `Contará previsiblemente a partir del ${day}: los ajustes de quien empieza esperan unos días, para que nadie pueda inundar el atlas.`,
  countsOnce: (owners: number) =>
    `Contará cuando ${owners} propietarios de este tamaño de calefactor hayan compartido ajustes, para que la media no dependa de uno solo.`,
  heldMeans: "Se guarda, pero no cuenta. Usa una sugerencia o corrígelo en la lista de abajo.",
  insideBand: "Eso queda dentro del intervalo de 95 de cada 100 calefactores.",
  outsideBand: "Eso queda fuera del intervalo de 95 de cada 100 calefactores.",
  receipt: "Recibo",
  receiptNote:
    "Se muestra solo esta vez. Con él puedes leer, corregir y retirar este ajuste; este navegador también te lo guarda.",
  receiptLost:
    "Se muestra solo esta vez, y este navegador no pudo guardarlo. Cópialo ahora: sin él nunca podrás corregir ni retirar el ajuste.",
  receiptIs: (receipt: string) => `Recibo ${receipt}`,
  copy: "Copiar el recibo",
  close: "Cerrar",
  copied: "Copiado",
  mine: "Compartido desde este navegador",
  none: "Todavía nada.",
  tuneLine: (kW: string, place: string | null, elevation: string, low: string, high: string) =>
    `${kW} kW${place ? ` cerca de ${place}` : ""} a ${elevation} m, ${low} Hz y ${high} Hz.`,
  download: "Descargar los recibos",
  revise: "Corregir",
  withdraw: "Retirar",
  withdrawSure: "Retirar para siempre",
  keep: "No retirarlo",
  withdrawn: "Retirado: fuera de los datos, del cálculo y de la exportación.",
  check: "¿Cuenta?",
  standing: {
    kept: "cuenta",
    rejected: "no cuenta: demasiado lejos de otros ajustes",
    "not in it": "no está en el cálculo",
  },
  sees: (low: string, high: string, fit: string) =>
    `potencia mínima ${low}, potencia máxima ${high} (cálculo ${fit}).`,
  key: "Tu clave",
  keyNote:
    "Una clave aleatoria en este navegador le dice al atlas que tus ajustes van juntos, para que compartan un voto. No dice nada de ti; el atlas guarda de ella solo un resumen cifrado. Se crea cuando envías un ajuste por primera vez.",
  forgetKey: "Borrar la clave",
  keyForgotten: "Borrada. El próximo ajuste crea otra.",
  keptForm: "No se perdió nada: el formulario está como lo dejaste.",
};
