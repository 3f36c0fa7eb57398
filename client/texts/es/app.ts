/** The page itself and its first views, in Spanish. */
export const t: typeof import("../en/app.ts").t = {
  name: "Hypsotune",
  tagline: "Ajustes iniciales para calefactores de aire diésel",
  skip: "Saltar al contenido",
  language: "Idioma",
  demo: "Datos inventados: ningún ajuste de aquí es real.",
  places: {
    start: "Inicio",
    trip: "Viaje",
    onsite: "In situ",
    logbook: "Bitácora",
    atlas: "Atlas",
  },
  low: "Potencia mínima",
  high: "Potencia máxima",
  endWord: { low: "potencia mínima", high: "potencia máxima" },
  unit: "unidad",
  rpm: "rpm",
  loading: "Consultando el atlas …",
  partMissing:
    "No se pudo cargar esta parte de la página. Vuelve a cargarla cuando tengas conexión.",
  unreachable:
    "No se puede conectar con el atlas. Las cifras salen del cálculo guardado en este navegador.",
  notReached: "No se puede conectar con el atlas. Comprueba la conexión e inténtalo de nuevo.",
  noFit:
    "No se puede conectar con el atlas, y este navegador aún no tiene guardado ningún cálculo. Inténtalo de nuevo cuando tengas conexión.",
  retry: "Intentar de nuevo",
  alarm: {
    open: "¡Alarma de CO dentro!",
    title: "Todos fuera. Ya.",
    call: "Después, desde fuera, llama a emergencias:",
    local: "o al número local",
    outside: "Cuando todos estén fuera",
  },
  safety: {
    title: "El monóxido de carbono mata",
    more: "Todas las advertencias",
    brief:
      "Solo un punto de partida. El monóxido de carbono mata: ajusta al aire libre y nunca duermas sin un detector de CO.",
    notice:
      "Solo un punto de partida, nunca un ajuste acabado. El monóxido de carbono mata. Ajusta al aire libre, vigila el medidor junto al escape y ten en marcha, dondequiera que se duerma, un detector de CO aparte y certificado: nunca el medidor del escape. Que el detector calle no significa que no haya monóxido de carbono. Alarma, dolor de cabeza o mareo: todos fuera, al aire fresco, y después pide ayuda.",
    notFor: "No sirve para",
    not_for: [
      "ajustar en un garaje, una tienda de campaña, una cabaña o cualquier espacio cerrado, ni con alguien dormido dentro",
      "sustituir los ajustes del fabricante donde no se permite cambiarlos: algunas instalaciones homologadas no se pueden modificar en absoluto",
      "juzgar si se puede respirar el aire sin peligro",
    ],
    deferTo: "Esto va primero",
    defer_to: [
      "el manual del fabricante",
      "la normativa local y las reglas de homologación de vehículos y embarcaciones",
      "los profesionales autorizados de calefacción y electricidad",
    ],
  },
  site: {
    title: "Dónde",
    place: "Lugar",
    placeHint: "Población, paso o campamento",
    elevation: "Altitud",
    positionLabel: "O donde estás",
    position: "Usar mi ubicación",
    positionNote: "Tu ubicación no sale de este dispositivo.",
    positionDenied: "La ubicación está desactivada o bloqueada. Escribe una altitud o un lugar.",
    positionWait: "Esperando la ubicación …",
    noPlace: (name: string) =>
      `Ningún lugar se llama «${name}». Revisa la ortografía o escribe la altitud.`,
    similar: (name: string) =>
      `Ningún lugar se llama «${name}». Elige un nombre parecido o escribe la altitud.`,
    results: (n: number) => (n === 1 ? "1 lugar" : `${n} lugares`),
    unknownElevation: "altitud desconocida",
    estimate: (half: string) =>
      `Estimada, ±${half}. Si un cartel, un mapa o tu GPS dice otra cosa, escribe esa.`,
    outOfRange: (lowest: string, highest: string) => `El atlas responde de ${lowest} a ${highest}.`,
    notNumber: "Escribe un número.",
  },
  air: {
    title: "Aire de la noche",
    tunedTitle: "Aire al ajustar",
    tuned: "Temperatura al ajustar",
    temperature: "Temperatura nocturna",
    temperatureShort: "El aire frío es más denso: importa tanto como la altitud.",
    temperatureWhy:
      "El aire a −20 °C es un 16 % más denso que a +20 °C: tanto como 1500 m de altitud. Sin temperatura se toma la de la atmósfera estándar y los intervalos se ensanchan.",
    pressure: "Presión",
    pressureKind: "Esta presión es",
    station: "la del lugar",
    qnh: "la del nivel del mar (QNH)",
    pressureWhy:
      "La del lugar es la que marca un barómetro donde estás. Los partes del tiempo dan la del nivel del mar (QNH): confundirlas desvía la respuesta más del 20 % a 1700 m.",
    looksQnh: (standard: string) =>
      `A esta altitud un barómetro marca unos ${standard}. ¿Es la cifra del nivel del mar? Entonces elige QNH.`,
    humidity: "Humedad relativa, %",
  },
  heater: {
    title: "Calefactor",
    heat: "Tamaño del calefactor",
    heatOption: (kW: number) => `${kW} kW`,
    lowFan: "Velocidad del ventilador, potencia mínima, rpm",
    highFan: "Velocidad del ventilador, potencia máxima, rpm",
    fanWhy:
      "El tamaño es la potencia máxima de la etiqueta. Mejor escribe tus propias velocidades: si no, se toman las habituales de ese tamaño.",
    dose: "Combustible por pulso, µL",
    doseWhy: "Lo que da la bomba en cada pulso. Si lo sabes, verás también consumo y calor.",
  },
  answer: {
    title: "Ajustes iniciales",
    at: (place: string, elevation: string) => `${place}, ${elevation}`,
    elevationOnly: (elevation: string) => `a ${elevation}`,
    air: (density: string, ratio: string, altitude: string) =>
      `Aire de ${density} kg/m³, el ${ratio} del estándar al nivel del mar: como a ${altitude} en un día estándar.`,
    assumed: { temperature: "temperatura", pressure: "presión", humidity: "humedad" },
    assumes: (what: string) => `Tomado de la atmósfera estándar o de valores habituales: ${what}.`,
    or: (hz: string, fan: string) => `o ${hz} Hz, ${fan}`,
    times: (level: string, lower: string, upper: string) =>
      `${level} de cada 10 veces: ${lower}–${upper} Hz`,
    now: (hz: string) => `ahora ${hz}`,
    figures: "Todas las cifras",
    finer: "Más sobre aire y calefactor",
    fanAt: (rpm: string) => `ventilador a ${rpm} rpm`,
    exact: (hz: string) => `exactamente ${hz} Hz`,
    mean: "Ajuste medio",
    meanBand: (level: string) => `calefactor medio, seguro al ${level} %`,
    heaters: (level: string) => `${level} de cada 100 calefactores`,
    range: (lower: string, upper: string) => `de ${lower} a ${upper} Hz`,
    spoken: (end: string, hz: string, level: string, lower: string, upper: string) =>
      `${end}: empieza con ${hz} hercios; ${level} de cada 100 calefactores están entre ${lower} y ${upper}.`,
    burn: (litres: string, kW: string) =>
      `${litres} L/h, unos ${kW} kW para el interior (se supone un rendimiento del 80 %)`,
    tuneHere: "Ajustar aquí con un medidor de CO",
    printCard: "Imprimir la ficha",
    onMap: "Elegir en el mapa",
    waysTitle: "Dos maneras de llegar",
    way: "Manera",
    heatLeft: "Calor, respecto al nivel del mar",
    keepFan: "Mantener el ventilador, bajar la bomba",
    keepHeat: "Mantener el calor, subir el ventilador",
    fanShort: (limit: string) =>
      `El ventilador llega como mucho a unas ${limit} rpm: aquí no se alcanza todo el calor.`,
    cannot: "Estas cifras no casan entre sí. Revisa las velocidades y la presión.",
  },
  basis: {
    title: "En qué se basa",
    tunes: (tunes: string, contributors: string, kW: string) =>
      `${tunes} ajustes de ${contributors} propietarios de calefactores de ${kW} kW.`,
    prior: (kW: string) =>
      `Aún no hay ajustes de calefactores de ${kW} kW: es una estimación con física y práctica común, por eso los intervalos son anchos.`,
    range: (from: string, to: string) => `Se hicieron en aire de ${from} a ${to} kg/m³.`,
    extrapolated:
      "Nadie ha ajustado aún en un aire así. Está extrapolado: fíate menos de los intervalos.",
    inside: "El aire de aquí queda dentro.",
    fit: (version: string, age: string) => `Cálculo ${version}, ${age}.`,
    priorFit: "Aún no hay ningún cálculo publicado.",
    ages: {
      now: "recién publicado",
      minutes: (n: number) => `de hace ${n} min`,
      hours: (n: number) => `de hace ${n} h`,
      days: (n: number) => `de hace ${n} días`,
    },
  },
};
