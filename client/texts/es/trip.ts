/** Palabras del viaje. */
export const trip: typeof import("../en/trip.ts").trip = {
  add: {
    title: "Añadir una parada",
    intro:
      "Dónde duermes, por orden. El aire frío de la noche es más denso: importa tanto como la altitud.",
    name: "Nombre",
    elevation: "Altitud",
    temperature: "Temperatura nocturna",
    nights: "Noches",
    button: "Añadir esta parada",
    needElevation: "Escribe primero la altitud.",
    full: (most) => `Un viaje tiene ${most} paradas como máximo.`,
    byName: (n) => `Parada ${n}`,
    file: "O un archivo: GPX, GeoJSON o CSV",
    fileHint:
      "CSV con encabezado: name, elevation_m, temperature_C, lat, lon, nights. El archivo se lee solo en este navegador y no se sube. Sus paradas se añaden al final.",
    reading: "Leyendo el archivo …",
    added: (n) => (n === 1 ? "1 parada añadida." : `${n} paradas añadidas.`),
    estimated: (n) =>
      n === 1
        ? "1 altitud está estimada por su posición."
        : `${n} altitudes están estimadas por sus posiciones.`,
    line: (line, reason) => `Línea ${line}: ${reason}. No se añadió nada.`,
    refused: (reason) => `${reason}. No se añadió nada.`,
    noTerrain:
      "Algunas paradas no tienen altitud y no se pueden cargar los archivos para estimarla. Añade las altitudes o inténtalo de nuevo cuando tengas conexión",
  },
  map: {
    open: "O elegir en el mapa",
    middle: "Añadir el centro del mapa como parada",
    how: "Un clic o un toque añade allí una parada. Con el teclado: las flechas mueven el mapa, + y − acercan y alejan, Intro añade su centro.",
    name: (lat, lon) => `${lat}; ${lon}`,
    noTerrain: "No se pueden cargar los archivos que dan la altitud: escríbela.",
  },
  list: {
    empty: "Aún no hay paradas: busca un lugar, escribe una altitud o abre un archivo.",
    stop: (n, name) => `Parada ${n}: ${name}`,
    guess: (temperature) => `Vacío: se toman ${temperature}, de la atmósfera estándar.`,
    estimated: (half) => `Estimada por la posición, ±${half}.`,
    close: "Cerrar",
    earlier: "Antes",
    later: "Después",
    remove: "Quitar",
    earlierThan: (name) => `Adelantar ${name}`,
    laterThan: (name) => `Retrasar ${name}`,
    tune: "Ajustar allí",
    tuneAt: (name: string) => `Ajustar allí: ${name}`,
    removeThis: (name) => `Quitar ${name}`,
    nowAt: (name, n, of) => `${name} es ahora la parada ${n} de ${of}.`,
    clear: "Empezar otro viaje",
    bringBack: "Recuperar el último viaje",
  },
  heater: {
    title: "Calefactor y noches",
    rich: "Demasiado rica desde, %",
    lean: "Demasiado pobre desde, %",
    windowWhy:
      "Cuánto puede desviarse la mezcla de un buen ajuste antes de necesitar otro. Un 12 % más rica y un 25 % más pobre son valores de trabajo nuestros, no límites medidos.",
    hours: "Horas por noche",
    share: "Potencia, % del rango",
    shareHint: "0 es la potencia mínima, 100 la máxima.",
    supply: "Tensión de alimentación",
    tank: "Depósito de combustible, L",
    battery: "Batería utilizable, Ah",
    outOfRange: (least, most) => `De ${least} a ${most}.`,
  },
  result: {
    title: "El viaje",
    all: "Todas las cifras",
    kept: "Se muestra a lo largo del viaje",
    oneTune: "un ajuste para todo el viaje",
    each: "un ajuste nuevo en cada parada",
    now: "tu calefactor tal como está puesto ahora",
    fewest: (n) => `el menor número de ajustes: ${n}`,
    tuneOf: (n, name) => `ajuste de la parada ${n}, ${name}`,
    stop: "Parada",
    set: "Poner, mínima / máxima",
    guessed: "estimada",
    start: (end) => `Inicio, ${end}`,
    startHere: (hz) => `Ajuste inicial aquí: ${hz} Hz.`,
    bandOthers: (level, band) => `${level} de cada 10 calefactores: ${band} Hz.`,
    bandMine: (level, band) => `Tu calefactor, ${level} de cada 10 veces: ${band} Hz.`,
    shift: (end) => `Desviación, ${end}`,
    band: (lower, upper) => `${lower} a ${upper}`,
    about: (pct) => `±${pct}`,
    shifts: (shown) => `Ajustes y desviaciones de: ${shown}.`,
    bands: (low, high, level) =>
      `Debajo de cada inicio, con el ventilador a ${low} y ${high} rpm: donde están ${level} de 100 calefactores.`,
    bandsMine: (low, high, level) =>
      `Debajo de cada inicio, con el ventilador a ${low} y ${high} rpm: donde está tu calefactor ${level} de 100 veces.`,
    published: (date) => `publicado el ${date}`,
    tableLabel: "Tabla: ajustes, desviación de la mezcla, combustible y batería en cada parada",
    rich: (pct) => `${pct} % más rica`,
    lean: (pct) => `${pct} % más pobre`,
    none: "sin desviación",
    beyond: "fuera de los límites",
    tight: (room) => `justo: a ${room} % del límite`,
    extrapolated: "aún sin ajustes en un aire así",
    prior:
      "Aún no hay ajustes de este tamaño: es una estimación con física y práctica común, por eso los intervalos son anchos.",
    how: "La desviación compara la frecuencia de la bomba que puedes poner con la que se espera en la parada, con la misma velocidad del ventilador, en porcentajes enteros. Justo quiere decir más cerca del límite que un 3 %, o que la incertidumbre. ± es la incertidumbre por el aire de la noche y la altitud (95 de cada 100 casos); a ello se añade que el propio cálculo puede errar. Los intervalos son los de los ajustes iniciales: el mínimo de tu calefactor puede estar en cualquier punto de ellos, pero sus desviaciones de parada en parada siguen la misma curva.",
    cannot:
      "Estas cifras no casan entre sí. Revisa las velocidades, el combustible por pulso y los límites.",
  },
  plan: {
    yes: (rates) => `Basta un ajuste: ${rates} Hz.`,
    tightly: (rates) => `Basta un ajuste, pero muy justo: ${rates} Hz.`,
    no: (n) => `No basta un ajuste: hacen falta ${n}.`,
    notQuite: "Un ajuste no basta del todo.",
    room: (place, room) => `Menos margen: ${place}, a ${room} % del límite.`,
    tight: (place, room) =>
      `Justo: ${place}, a solo ${room} % del límite. Compruébalo allí con el medidor.`,
    unsure: (place, room, unsure) =>
      `Justo: ${place}, a ${room} % del límite, que puede errar en un ${unsure} %. Ayuda saber mejor la temperatura nocturna o la altitud.`,
    over: (place, shift, over) =>
      `Lo que más se desvía: ${place}, ${shift}, ${over} % más allá del límite.`,
    coarse: (hz) =>
      `La bomba solo se puede poner en pasos de ${hz} Hz, más gruesos que tus límites: se toma el más cercano. El ventilador puede compensar el resto.`,
    changeAt: (names) => `Cambia en ${names}, antes de la noche.`,
    tune: (n) => `Ajuste ${n}`,
  },
  profile: {
    set: (low, high) => `Hz a potencia mínima / máxima; ventilador ${low} / ${high} rpm`,
    richer: "rica",
    leaner: "pobre",
    tap: "Toca una parada para cambiarla.",
    ends: "Barra izquierda: potencia mínima; derecha: máxima.",
    window: (rich, lean) => `Rayas: tus límites, ${rich} % más rica y ${lean} % más pobre.`,
    change: "Línea vertical: cambio.",
    guessed: "≈: noche desconocida, temperatura estimada.",
    nights: (n) => `${n} noches`,
    spokenSite: (elevation, night) => `${elevation}, noche ${night}.`,
    spokenEnd: (end, hz, shift) => `Pon ${hz} Hz a ${end}: ${shift}.`,
    press: "Pulsa para cambiar la parada.",
  },
  nights: {
    fuelWord: "Gasóleo",
    batteryWord: "Batería",
    spare: (full, pct) => `de ${full}: sobra ${pct} %`,
    spareTight: (full, pct) => `de ${full}: justo, solo sobra ${pct} %`,
    notEnough: (full) => `es más que ${full}`,
    tank: {
      tightWhy:
        "Justo, porque los calefactores difieren en más que eso, y una noche fría pide más. Prevé repostar por el camino, con el calefactor apagado y frío.",
      ends: "No basta un depósito lleno. Reposta aquí a más tardar, con el calefactor apagado y frío:",
      short: (name) => `Un depósito lleno no basta para una noche en ${name}.`,
      sooner: ". Justo: reposta una noche antes",
    },
    battery: {
      tightWhy:
        "Justo, porque los calefactores difieren en más que eso, y una batería da menos con frío. Prevé cargarla por el camino.",
      ends: "No basta una batería llena. Cárgala aquí a más tardar:",
      short: (name) => `Una batería llena no basta para una noche en ${name}.`,
      sooner: ". Justo: cárgala una noche antes",
    },
    count: (n) => (n === 1 ? "1 noche:" : `${n} noches:`),
    oneNight: (litres, Ah) => `Una noche gasta ${litres} L y ${Ah} Ah.`,
    afterLast: (left) => `Tras la última noche quedan ${left}.`,
    afterLastTight: (left) => `Tras la última noche quedan solo ${left}: justo.`,
    leftThen: (left) => `: entonces quedan ${left}`,
    refill: (name, night) => `${name}, antes de la noche ${night} allí`,
    refillEvery: (n) => (n === 1 ? ", luego antes de cada una" : `, luego cada ${n} noches`),
    nightsColumn: "Noches",
    fuelColumn: "Combustible, L",
    batteryColumn: "Batería, Ah",
    tankColumn: "Depósito dura, noches",
    chargeColumn: "Batería dura, noches",
    total: "Todas las noches",
    noDose:
      "Estimado según lo que suele gastar un calefactor de este tamaño en ese aire: con el combustible por pulso (µL) será más exacto.",
    assumes: (hours, share, current, V) =>
      `Se supone: ${hours} h por noche al ${share} % del rango de potencia, con los ajustes iniciales de cada parada; ${current} A en marcha a ${V} V, un arranque por noche; nada más gasta del depósito ni de la batería, y nada la carga por el camino.`,
    practice: (run, start, minutes) =>
      `${run} A en marcha, de potencia mínima a máxima, ${start} A en el arranque: práctica común, sin fuente; ${minutes} minutos por arranque: valor nuestro.`,
  },
  keep: {
    title: "Llevárselo",
    send: "Enviar el viaje",
    link: "Copiar el enlace",
    linkLabel: "Enlace que contiene este viaje",
    linkNote:
      "El enlace contiene todo el viaje, también nombres y posiciones. No se envía al atlas; quien lo reciba puede leerlo.",
    print: "Imprimir",
    csv: "Descargar como CSV",
    json: "Descargar como JSON",
    gpx: "Descargar como GPX",
    geojson: "Descargar como GeoJSON",
    unplaced: (n) =>
      n === 1
        ? "1 parada no tiene posición: GPX y GeoJSON la omiten."
        : `${n} paradas no tienen posición: GPX y GeoJSON las omiten.`,
    kept: "Este viaje está guardado en este navegador.",
    notKept:
      "Este navegador no lo guarda (almacenamiento lleno o bloqueado): copia el enlace en su lugar.",
    opened: (n) =>
      n === 1 ? "Abierto desde un enlace: 1 parada." : `Abierto desde un enlace: ${n} paradas.`,
    openedOwn: (n) =>
      n === 1
        ? "Está calculado con 1 ajuste propio del calefactor de quien lo envió."
        : `Está calculado con ${n} ajustes propios del calefactor de quien lo envió.`,
    openedAverage: "Muestra la respuesta media para un calefactor así, sin ajustes propios.",
    linkRefused: (reason) => `${reason}. El viaje de abajo es el guardado en este navegador.`,
    back: "Volver al viaje guardado antes",
  },
  cautions: {
    title: "En ruta",
    lines: [
      "No repostes mientras el calefactor esté caliente o en marcha.",
      "Tras caminos malos, y antes de la primera noche, revisa las juntas del escape, la toma de aire y los conductos de combustible.",
      "Fusible y cable deben tener la medida que pide el fabricante; el arranque es lo que más corriente consume.",
      "Un ajuste llevado a otro lugar es un comienzo, no un ajuste acabado: donde importe, ajusta de nuevo al aire libre con el medidor.",
    ],
  },
  refused: {
    empty: "El archivo está vacío",
    noText: "El archivo no es texto",
    noStop: "No hay ninguna parada en el archivo",
    tooMany: (n, most) => `El archivo tiene ${n} paradas; un viaje tiene ${most} como máximo`,
    tooLarge: (MB) => `El archivo pasa de ${MB} MB`,
    unreadable: "La parada no se puede leer",
    pair: "lat y lon van juntas: falta una de ellas",
    nowhere: "ni altitud ni posición",
    mustBe: (name, least, most, unit) => `${name} debe ser un número de ${least} a ${most}${unit}`,
    notNumber: (name, text) => `${name} no es un número: «${text}»`,
    csvHead:
      "el encabezado debe nombrar las columnas elevation_m, o lat y lon (name y temperature_C si se quiere)",
    csvLine: "esto no se puede leer como CSV",
    csvLength: "tiene más o menos campos que el encabezado",
    csvOpen: "se abren comillas que no se cierran",
    csvAfterQuote: "hay texto tras unas comillas de cierre",
    csvMiddleQuote: "hay comillas en medio de un campo",
    json: "esto no es JSON legible",
    notGeoJson:
      "El archivo es JSON, pero no GeoJSON: hace falta FeatureCollection, Feature o Point",
    notFeature: (n) => `el número ${n} de la colección no es un Feature`,
    position: "un punto necesita dos números, lon y lat",
    documentType: "El archivo declara un tipo de documento, que GPX no necesita",
    xml: "esto no es XML legible",
    notGpx: "El archivo es XML, pero no GPX",
    trackOnly: "El archivo contiene solo un recorrido grabado: ningún punto donde parar",
    linkLong: "El enlace es más largo que cualquier viaje",
    linkNone: "El enlace no contiene ningún viaje",
    linkNewer:
      "El enlace es de una versión más nueva de esta página: recarga la página y ábrelo de nuevo",
    linkDamaged: "El enlace está dañado, quizá falte una parte: cópialo de nuevo, entero",
    linkFigures: "El enlace contiene cifras imposibles: puede haber cambiado por el camino",
  },
};
