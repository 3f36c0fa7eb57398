/** Words of the On site view, in Spanish. */
export const onsite: typeof import("../en/onsite.ts").onsite = {
  title: "In situ: ajustar con un medidor de CO",
  intro:
    "Una búsqueda guiada a potencia mínima y después a máxima: ajustar, esperar, leer, hasta que el CO sea el más bajo. Funciona sin red y guarda todo lo que pulsas.",
  notKept: "Este navegador no guarda lo que pulsas: al recargar se perdería la búsqueda.",
  prepare: {
    basis: "Lugar, aire, calefactor",
    nightWhy: "Para la noche que viene: al final verás cómo le va el ajuste.",
    air: "Aire ahora",
    temperatureNow: "Temperatura ahora",
    airNow: "Donde el calefactor toma el aire. Vacía: atmósfera estándar.",
    start: (low, high) => `La búsqueda mira cerca de ${low} Hz y ${high} Hz.`,
    fansAt: (low, high) => `El ventilador se queda en ${low} y ${high} rpm.`,
    finerAir: "Presión y humedad",
    fansAndSteps: "Ventilador y pasos",
    figures: "Qué puede mostrar",
    before: "Ajustes actuales",
    beforeWhy: "La búsqueda empieza aquí. Si la abandonas, vuelve a poner estos valores.",
    lowBefore: "Frecuencia de la bomba ahora, potencia mínima, Hz",
    highBefore: "Frecuencia de la bomba ahora, potencia máxima, Hz",
    fanWhy:
      "Velocidades del ventilador como están ahora: la búsqueda solo cambia la bomba. Si las dejas vacías, se toman las habituales de ese tamaño.",
    step: "Paso más pequeño de la bomba, Hz",
    supply: "Tensión de alimentación, V (opcional)",
    meter: "Medidor junto al escape",
    meterWhy:
      "El tipo rellena lo habitual en esos medidores (práctica común, sin fuente). El manual de tu medidor lo sabe mejor.",
    kind: "Tipo de medidor",
    resolution: "Diferencia más pequeña que muestra, ppm",
    floor: "Lectura más baja que puede mostrar, ppm",
    floorHint:
      "0 si lo muestra todo. Muchos detectores de interior no muestran nada por debajo de 30: eso no significa 0.",
    ceiling: "Lectura más alta que puede mostrar, ppm",
    lag: "Tiempo de respuesta, segundos",
    lagHint:
      "Lo que tarda en mostrar la mayor parte de un cambio. Basta una estimación: solo decide cuánto hay que esperar.",
    distance: "Distancia a la salida del escape, m",
    distanceHint: "Unos 0,3 m es práctica común (sin fuente). El mismo punto en cada lectura.",
    missing: "Rellena este campo.",
    range: (least, most) => `De ${least} a ${most}, por favor.`,
    ends: "La frecuencia a potencia máxima debe ser mayor que a mínima.",
    cannot:
      "Con estas cifras no se pueden calcular los ajustes iniciales. Revisa las velocidades y la presión.",
    fix: "Revisa los campos marcados.",
    begin: "Ir a la lista de comprobación",
  },
  guards: (lean, rich) => `Límites: ${lean}–${rich} Hz.`,
  progress: {
    step: (step, most) => `Paso ${step} de ${most} como máximo.`,
    lean: "Más pobre",
    rich: "Más rica",
    seen: {
      rose: "el CO subió\u00a0✓",
      open: "aún sin subida",
      "flame-out": "la llama se apagó",
      limit: "límite alcanzado",
    },
    at: (co, rate) => `${co} ppm a ${rate} Hz`,
    next: (rate) => `después: ${rate} Hz`,
  },
  keys: {
    label: "Cifras",
    minus: "Sobre o bajo 0",
    decimal: "Coma decimal",
    remove: "Borrar",
  },
  checklist: {
    title: "Antes de encender",
    intro: "Míralo todo y después márcalo.",
    checks: {
      air: "El vehículo está al aire libre, con las puertas abiertas, y nadie duerme dentro.",
      alarm:
        "Dentro hay un detector de CO aparte y certificado, y acabo de pulsar su botón de prueba. No es el medidor del escape.",
      exhaust:
        "El escape y la toma de aire no tienen fugas, están libres y bien separados: el calefactor no aspira sus propios gases.",
      meter:
        "El medidor no muestra nada al aire limpio y está sujeto cerca del escape, no dentro: fuera del chorro caliente, siempre en el mismo punto.",
      fuel: "Hay combustible para una hora a plena potencia, y nadie reposta mientras algo esté caliente.",
      supply:
        "La tensión se mantiene con carga: una batería débil altera el ventilador y la bomba.",
    },
    hot: "El escape se calienta tanto que quema la piel y prende la hierba seca. Después de apagarlo, deja que el calefactor se enfríe solo: nunca le cortes la corriente.",
    maker:
      "El manual del fabricante va primero. Algunas instalaciones homologadas no se pueden modificar en absoluto.",
    light: "El calefactor está en marcha",
    tickAll: "Márcalo todo antes.",
  },
  warmUp: {
    title: "Calentamiento",
    why: "Déjalo en marcha a potencia mínima. Con el quemador frío, las lecturas no dicen nada.",
    left: "Faltan",
    over: "Caliente. Empieza a potencia mínima.",
    begin: "Empezar a potencia mínima",
    already: "Ya está caliente",
  },
  step: {
    title: (end) => `${end}: paso siguiente`,
    titleWait: (end) => `${end}: esperar y leer`,
    settling: "Deja que la llama y el medidor se estabilicen.",
    set: "Pon la bomba a",
    keep: "La bomba sigue a",
    why: {
      start: "Empieza donde está la bomba ahora.",
      turnUp:
        "Pon el calefactor a potencia máxima y déjalo ahí. Empieza donde está su bomba ahora.",
      leaner: "Un poco más pobre.",
      richer: "Un poco más rica.",
      between: "Entre dos lecturas, donde el CO puede ser aún más bajo.",
      "on the way": "De camino, porque la bomba se mueve a pasos cortos.",
      confirm: "Para confirmar: una lectura más aquí.",
      spike: "El CO se ha disparado: vuelve atrás enseguida.",
      "flame-out":
        "De vuelta adonde funcionaba. La frecuencia a la que se apagó la llama es demasiado pobre y no se prueba más.",
      wait: "La lectura aún no es estable: lee otra vez con la misma frecuencia.",
    },
    isSet: "Ya está puesta",
    thenWait: (span) => `Después espera ${span}.`,
    readIn: "Leer el medidor en",
    readNow: "Lee ahora el medidor",
    reading: "El medidor muestra, ppm",
    take: "Usar esta lectura",
    below: (floor) => `Menos de ${floor}`,
    above: (ceiling) => `Más de ${ceiling}`,
    still: "Estable desde hace 30 s",
    noReading:
      "Escribe la lectura, o di que está por debajo o por encima de lo que tu medidor puede mostrar.",
    aboveCeiling: (ceiling) =>
      `«El medidor muestra» pasa de ${ceiling} ppm, la lectura más alta que indicaste para tu medidor. Revisa la cifra o pulsa «Más de ${ceiling}».`,
    belowZero: "Un medidor muestra 0 o más. Revisa la cifra.",
    early:
      "Una lectura cuenta cuando es estable: cuando dos coinciden, o cuando la has mirado durante medio minuto.",
    out: "Se ha apagado la llama",
    signal: "Sonido y vibración cuando acaba una espera",
    undo: "Deshacer lo último",
    leave: "Abandonar la búsqueda",
    leaveSure: "Abandonar y ver qué valores reponer",
    stay: "Seguir buscando",
    seconds: (n) => `${n} s`,
    minutes: (n) => `${n} min`,
  },
  chart: {
    title: "CO según la frecuencia de la bomba",
    x: "Frecuencia de la bomba, Hz",
    y: "CO en el medidor, ppm",
    label: "Gráfico de las lecturas: CO según la frecuencia de la bomba.",
    first: "Ninguna lectura aún.",
    lowest: (co, rate) => `Lo más bajo hasta ahora: ${co} ppm a ${rate} Hz.`,
    lowestBelow: (floor, rate) => `Lo más bajo hasta ahora: menos de ${floor} ppm a ${rate} Hz.`,
    next: (rate) => `siguiente: ${rate}`,
    keyLine: "lecturas, unidas",
    keyBetween: "fuera de aquí el CO es claramente más alto",
    keyNext: "siguiente",
    readings: "Lecturas",
    rate: "Bomba, Hz",
    co: "CO, ppm",
    time: "Tras el cambio",
    flameOut: "llama apagada",
    settled: "era estable",
    none: "Ninguna aún.",
  },
  ended: {
    found: {
      title: (end) => `${end}: encontrado`,
      minimum: (rate, lower, upper) =>
        `El CO es más bajo cerca de ${rate} Hz: a ${lower} y a ${upper} Hz era claramente más alto.`,
    },
    "not bracketed": {
      title: (end) => `${end}: lo mejor hasta ahora, sin mínimo`,
      means:
        "El CO no subió a ambos lados de esta frecuencia. Es la mejor de las leídas, no un mínimo medido.",
      farther: "Más allá el CO puede ser más bajo.",
      lean: {
        rose: () => "Más pobre: el CO subió.",
        "flame-out": () => "Más pobre: la llama se apaga antes de que suba el CO.",
        limit: (rate) =>
          `Más pobre: a ${rate} Hz, la última frecuencia dentro de los límites, el CO no había subido claramente. Si las velocidades, el lugar y el aire están bien escritos, este calefactor es distinto de la mayoría.`,
        open: (rate) =>
          `Más pobre: los pasos se acabaron a ${rate} Hz antes de que el CO subiera claramente.`,
      },
      rich: {
        rose: () => "Más rica: el CO subió.",
        "flame-out": () => "Más rica: la llama se apaga antes de que suba el CO.",
        limit: (rate) =>
          `Más rica: a ${rate} Hz, la última frecuencia dentro de los límites, el CO no había subido claramente. Si las velocidades, el lugar y el aire están bien escritos, este calefactor es distinto de la mayoría.`,
        open: (rate) =>
          `Más rica: los pasos se acabaron a ${rate} Hz antes de que el CO subiera claramente.`,
      },
      changed:
        "Las lecturas a esta frecuencia cambiaron por el camino: viento, calentamiento o un medidor que deriva. Por eso ninguna cuenta como mínimo.",
      now: "Por ahora puedes usarla si la llama es estable.",
      further: "Para seguir buscando, empieza aquí de nuevo: la búsqueda parte de esta frecuencia.",
    },
    "below floor": {
      title: (end) => `${end}: por debajo de lo que muestra el medidor`,
      means: (floor, lower, upper) =>
        lower === upper
          ? `A ${lower} Hz el CO queda por debajo de ${floor} ppm, lo más bajo que puede mostrar tu medidor.`
          : `De ${lower} a ${upper} Hz el CO queda por debajo de ${floor} ppm, lo más bajo que puede mostrar tu medidor.`,
      middle: "El centro de ese tramo es una elección sensata, no un mínimo medido.",
      suggested:
        "No se vio hasta dónde llega ese tramo. El ajuste inicial, o la frecuencia más próxima dentro del tramo, es una elección sensata, no un mínimo medido.",
      now: (floor) =>
        `Menos de ${floor} no significa 0. Para encontrar un mínimo, empieza aquí de nuevo con el medidor más cerca del escape, o con uno que muestre lecturas más bajas.`,
    },
    "above scale": {
      title: (end) => `${end}: por encima de lo que muestra el medidor`,
      means: (ceiling) =>
        `Todas las lecturas pasan de ${ceiling} ppm, lo más alto que puede mostrar tu medidor, así que no puede encontrar un mínimo. Deja la bomba en esta frecuencia, aleja el medidor del escape y empieza de nuevo. Si sigue así, haz revisar el calefactor.`,
    },
    goOn: "Seguir sin mínimo",
  },
  found: {
    leave: "Deja la bomba a",
    shown: (co) => `Allí el medidor se estabilizó en ${co}.`,
    flat: (lower, upper) =>
      `De ${lower} a ${upper} Hz el CO es el mismo, hasta donde el medidor distingue.`,
    seat: {
      low: "La frecuencia elegida queda hacia el borde rico de ese tramo, donde una llama baja es más estable.",
      high: "La frecuencia elegida queda en el lado pobre de ese tramo, donde hay menos hollín.",
    },
    besideFlameOut: (rate) =>
      `A ${rate} Hz, apenas más pobre, la llama se apagó. Con viento o en una noche más fría puede apagarse también aquí: entonces pon la bomba un paso más rica.`,
    practice:
      "Un CO de menos de 30 ppm junto al escape es habitual, 7–15 ppm es bueno (práctica común, sin fuente). Otro medidor u otro punto muestra otra cifra.",
    nextHigh: "Seguir a potencia máxima",
    nextCheck: "Seguir con las comprobaciones",
    again: "Empezar aquí de nuevo",
  },
  check: {
    title: { middle: "Comprobación a potencia media", full: "Comprobación a plena potencia" },
    why: {
      middle:
        "Entre la potencia mínima y la máxima el mando va en línea recta: a medio camino, la bomba y el ventilador también están a medio camino, y el CO queda entre las dos lecturas.",
      full: "Una vez más a plena potencia: el CO debe volver a donde se estabilizó a potencia máxima.",
    },
    setTo: {
      middle: "Pon la potencia a medio camino entre la mínima y la máxima",
      full: "Pon la plena potencia",
    },
    is: (pump, fan) => `allí la bomba va a unos ${pump} Hz y el ventilador a ${fan} rpm`,
    expect: (co, upper) => `Se esperan unos ${co} ppm; más de ${upper} es malo.`,
    expectBelow: (upper) => `Más de ${upper} ppm es malo.`,
    good: (co) => `${co}: como se esperaba.`,
    unseen: "El medidor no muestra nada aquí: eso no dice nada ni a favor ni en contra.",
    poor: (co) => `${co}: claramente más que a potencia mínima y máxima.`,
    poorMeans: {
      middle:
        "O el mando no va en línea recta, o uno de los dos ajustes ya no vale. No cambies ninguno para compensarlo: lee antes otra vez a potencia mínima y a máxima. Si sigue mal, calienta solo cerca de la potencia mínima o de la máxima y haz revisar el calefactor.",
      full: "La potencia máxima no mantiene lo que mostró: la lectura aún no era estable, o algo ha cambiado. Lee otra vez, o repite la búsqueda a potencia máxima en otro momento. Si sigue mal, haz revisar el calefactor.",
    },
    readAgain: "Leer otra vez",
    skip: "Saltar esta comprobación",
    next: "Seguir a plena potencia",
    finish: "Terminar",
    skipped: "sin hacer",
  },
  relight: {
    title: "La llama está apagada",
    cool: "Deja que el calefactor se enfríe solo. Nunca le cortes la corriente. El escape está caliente; el combustible sin quemar puede humear.",
    richer: (rate) => `Después pon la bomba más rica, a ${rate} Hz, y enciende otra vez.`,
    same: "Después enciende otra vez.",
    rule: (left) =>
      left === 1
        ? "Queda un intento; después, solo el manual del fabricante."
        : `${left} intentos de encendido como mucho; después, solo el manual del fabricante.`,
    attempt: "Se ha enfriado: enciendo ahora",
    burns: "Hay llama",
    noLight: "No enciende",
  },
  stopped: {
    alarm: {
      title: "Nadie entra",
      lines: [
        "Nadie vuelve a entrar: ni a buscar la causa, ni por el calefactor, ni por ninguna cosa.",
        "¿Dolor de cabeza, mareo o náuseas, o falta alguien? Dilo al llamar. Ve al médico aunque se pase.",
        "Apaga el calefactor solo si puedes hacerlo desde fuera. Deja que se enfríe solo.",
        "Nadie lo enciende y nadie duerme allí hasta que el aire esté limpio, el detector calle y alguien que conozca estos calefactores haya encontrado la causa.",
      ],
      number: "Ver el número de emergencias",
      sweepEnded: "La alarma terminó la búsqueda.",
      later: "Más tarde: volver a los ajustes de antes",
      onlyThen: "Solo cuando el aire esté limpio y se haya encontrado la causa.",
      areBack: "Ya están como antes",
      endSweep: "Terminar esta búsqueda",
      notYet: "Todavía no",
      mistaken: "Lo pulsé por error",
      mistakenSure: "Sí: no hay alarma, y dentro no se midió CO",
    },
    flame: {
      title: "Ningún intento más",
      lines: [
        "La llama se ha apagado, o no ha vuelto, demasiadas veces. Deja que el calefactor se enfríe solo; nunca le cortes la corriente.",
        "Desde aquí sigue el manual del fabricante, o haz revisar el calefactor.",
      ],
    },
    abort: {
      title: "Has abandonado la búsqueda",
      lines: [
        "No se guarda ningún ajuste. Deja que el calefactor se estabilice, o que se enfríe solo; nunca le cortes la corriente.",
      ],
    },
    putBack: "Volver a los ajustes de antes",
    fanKept:
      "Como los indicaste antes de la búsqueda. Solo cambió la bomba: el ventilador está como estaba.",
    fan: "Ventilador, rpm",
    pump: "Bomba, Hz",
    resume: "Volver a la búsqueda",
    anew: "Empezar otra búsqueda",
    anewSure: "Sí: descartar esta",
  },
  done: {
    title: "Los dos mínimos, encontrados",
    titleSet: "Las dos potencias, ajustadas",
    end: "Potencia",
    pump: "Bomba, Hz",
    fan: "Ventilador, rpm",
    co: "CO más bajo",
    minimum: "Mínimo entre, Hz",
    none: "ningún mínimo visto",
    settled: "Lecturas",
    before: "Antes de la búsqueda, Hz",
    logged: "Guardado en la bitácora.",
    whose: "¿Qué calefactor has ajustado?",
    whoseWhy: "El ajuste entra en su bitácora, y las respuestas para él serán más precisas.",
    whoseNew: "Uno que no está en la lista",
    notLogged:
      "No se pudo guardar en la bitácora: puede que el almacenamiento esté lleno o bloqueado.",
    retry: "Probar otra vez",
    openLogbook: "Abrir la bitácora",
    recheck:
      "Vale para este calefactor, este lugar y este aire. Compruébalo otra vez tras 500 m de altitud o 15 °C (valores de trabajo nuestros).",
    night: {
      title: "En el aire de la noche que viene",
      temperature: "Temperatura nocturna",
      type: "Escribe cuánto frío hará: el aire frío es más denso, y con los mismos ajustes la mezcla va más pobre.",
      air: (night, size, now) =>
        `A ${night} el aire es un ${size} que a los ${now} en que ajustaste.`,
      same: (night, now) =>
        `A ${night} el aire es tan denso, hasta medio por ciento, como a los ${now} en que ajustaste.`,
      denser: (pct) => `${pct} % más denso`,
      thinner: (pct) => `${pct} % menos denso`,
      assumed: (now) =>
        `No indicaste la temperatura al ajustar: se toman los ${now} de la atmósfera estándar, así que es una estimación.`,
      asIs: "Si se deja así",
      pump: "Poner la bomba a, Hz",
      fan: "O el ventilador a, rpm",
      fanUsual: "O el ventilador",
      richer: (pct) => `${pct} % más rica`,
      leaner: (pct) => `${pct} % más pobre`,
      none: "sin cambio",
      faster: (pct) => `${pct} % más rápido`,
      slower: (pct) => `${pct} % más lento`,
      fanEnds: "más de lo que puede",
      unchanged: "igual",
      stay: (rich, lean) =>
        `Puede quedarse así: hasta un ${rich} % más rica o un ${lean} % más pobre que en el mínimo lo damos por bueno (valores de trabajo nuestros). Para tener el CO más bajo también de noche, haz una de estas cosas:`,
      tight: (room, rich, lean) =>
        `Puede quedarse así, pero justo: queda un ${room} % hasta el límite (de un ${rich} % más rica a un ${lean} % más pobre que en el mínimo, valores de trabajo nuestros). Mejor haz una de estas cosas en cada potencia:`,
      set: (rich, lean) =>
        `Demasiado: más de un ${rich} % más rica o un ${lean} % más pobre que en el mínimo (valores de trabajo nuestros). Antes de la noche, haz una de estas cosas en cada potencia:`,
      nearOut: (end, night) =>
        `${end}: la llama se apagó con una mezcla solo un poco más pobre, y a ${night} lo será aún más. Mejor ajusta uno de estos que dejarlo como está:`,
      well: "Déjalo como está.",
      worked:
        "Calculado con la densidad del aire, no medido. Si puedes, lee el medidor otra vez al aire libre con el frío, y vuelve a los ajustes de ahora cuando haga menos frío.",
    },
    shareTitle: "Compartir este ajuste",
    shareIntro:
      "Como está arriba, con medidor, aire, mes y cómo lo encontraste. No hay que escribir nada otra vez.",
    sharePlace:
      "Enviar también el lugar, como el centro de una celda del mapa de unos 250 km²; nada más preciso sale de este navegador.",
    wrong: "Así no se puede compartir:",
    inShare: "Verlo en «Compartir»",
    receiptKept: "El recibo se guarda con la entrada de la bitácora y en «Compartir».",
    receiptNotKept: "Este navegador no pudo guardar el recibo. Cópialo ahora:",
    anew: "Empezar otra búsqueda",
    keepShown: "Seguir viendo esta",
    heaterName: "Sin nombre",
    span: (lower, upper) => `${lower} a ${upper}`,
    verdicts: {
      good: "como se esperaba",
      high: "como se esperaba, pero alto",
      poor: "malo",
      unseen: "no se ve",
    },
  },
};
