import type { Words } from '../en';
import { counted, whole } from '../format';

export const handOver: Words['handOver'] = {
  open: 'Pasar a otro dispositivo',
  title: 'Pasar a otro dispositivo',
  give: (run) => `Pasar ${run} a otro dispositivo`,
  giveHint:
    'Otro dispositivo corta y plancha esta tirada, sin red: recibe pedidos, prendas, transfers, recetas, máquinas y lo que está marcado. Allí solo se marca; nada más se puede cambiar.',
  draft: (run) =>
    `${run} es un borrador y todavía puede cambiar. Hay que bloquearla para imprimir en la sala Película y pasarla después.`,
  back: (run) => `Devolver lo marcado en ${run}`,
  backHint: 'El dispositivo del que vino lo recibe y conserva también lo que se marcó allí.',
  what: 'Traspasar',
  whats: {
    ticks: 'lo nuevo desde lo último recibido allí',
    'all-ticks': 'todo lo marcado aquí, otra vez',
    run: 'toda la tirada, a un tercer dispositivo',
  },
  takenInThere: 'El otro dispositivo ya lo tiene',
  handedBackNote: 'Desde ahora solo se devuelve lo nuevo.',
  asFile: 'Guardar como archivo',
  asFileHint:
    'Con imágenes pequeñas del arte. Se lleva en una memoria USB o se envía como cualquier archivo.',
  asCodes: 'Mostrar como códigos',
  asCodesHint: 'El otro dispositivo los lee de esta pantalla con su cámara.',
  boxesAlone:
    'Los contornos de las copias no caben en doce códigos: el otro dispositivo muestra y ordena rectángulos. Un archivo los lleva.',
  tooMany: 'Es demasiado para doce códigos. Hay que guardarlo como archivo y abrirlo en el otro dispositivo.',
  nothingTicked: 'Aquí todavía no se marcó ni se estropeó nada que el otro dispositivo no sepa.',
  fileName: (run, kind) => (kind === 'run' ? `${run}.rollwright` : `${run} marcas.rollwright`),
  codeOf: (number, of, ways) => `Código ${whole(number, ways)} de ${whole(of, ways)}`,
  codesHint: 'Sirven en cualquier orden, y dos veces no daña. El otro dispositivo dice cuáles faltan.',
  previous: 'Código anterior',
  next: 'Código siguiente',
  play: 'Uno tras otro',
  pause: 'Quedarse en este',
  take: 'Recibir',
  takeHint: 'Hay que abrir lo que otro dispositivo muestra o guardó: una tirada, o lo que se marcó en una.',
  camera: 'Leer códigos con la cámara',
  cameraStop: 'Apagar la cámara',
  cameraHint:
    'Hay que sostener la cámara quieta y recta ante la pantalla. El código entero con su borde blanco llena casi toda la imagen.',
  files: 'Abrir archivos o fotos de códigos',
  filesHint: 'Archivos de «Guardar como archivo» o fotos de códigos; se pueden abrir varios a la vez.',
  cameraProblems: {
    'no-camera': 'No se encontró ninguna cámara. Hay que abrir fotos de los códigos, o el archivo.',
    'not-allowed':
      'Aquí no se permite la cámara. Hay que permitirla para esta página en los ajustes del navegador, o abrir fotos de los códigos, o el archivo.',
    'in-use':
      'La cámara no da imagen: quizá la usa otro programa. Hay que cerrarlo y probar otra vez, o abrir fotos de los códigos, o el archivo.',
    lost: 'La cámara se desconectó. Lo leído se conserva. Hay que encenderla otra vez, o abrir fotos de los códigos, o el archivo.',
    'not-secure':
      'El navegador no da cámara a una página que no llegó por HTTPS. Hay que abrir fotos de los códigos, o el archivo.',
  },
  read: (count, of, ways) => `${whole(count, ways)} de ${whole(of, ways)} códigos leídos`,
  missing: (numbers, ways) => `Faltan: ${numbers.map((number) => whole(number + 1, ways)).join(', ')}.`,
  anew: 'Empezar de nuevo con otro traspaso',
  codeProblems: {
    'not-code': 'Es un código, pero no de Rollwright. No se cambió nada.',
    damaged: 'El código no se leyó entero. No se cambió nada. Hay que mostrarlo otra vez.',
    newer:
      'El código es de una versión más nueva. No se cambió nada. Hay que actualizar este dispositivo y leerlo otra vez.',
    other:
      'El código es de otro traspaso. No se cambió nada. Hay que seguir con el que se empezó, o empezar de nuevo.',
  },
  noCode: (file) =>
    `«${file}» no es un traspaso, y no se encontró en él ningún código. No se cambió nada. La foto tiene que mostrar el código entero con su borde blanco, nítido.`,
  sealProblems: {
    'not-hand-over': 'No es un traspaso de Rollwright. No se cambió nada.',
    damaged:
      'El traspaso está dañado: falta una parte o se alteró. Aquí no se cambió nada. Hay que traspasar otra vez.',
    newer:
      'El traspaso es de una versión más nueva. Aquí no se cambió nada. Hay que actualizar este dispositivo y recibirlo después.',
    'part-missing':
      'Falta una parte de Rollwright para leer este traspaso de una versión anterior. Aquí no se cambió nada. Hay que recargar la página con la red conectada y recibirlo después.',
  },
  failed: 'No se pudo traspasar. No se cambió nada.',
  notWriting: 'Los cambios se hacen en otra pestaña. Hay que recibir allí, o pasar el trabajo a esta.',
  taken: {
    run: (run) =>
      `${run} está aquí para cortar y planchar. Hay que marcar lo que está hecho y devolver las marcas.`,
    again: (run, ticks, ways) =>
      `${run} está al día${ticks > 0 ? `, con ${counted(ticks, 'marca', 'marcas', ways)} más` : ''}; lo que se marcó aquí se conserva.`,
    ticks: (run, ticks, spoilages, ways) =>
      [
        `${run}: ${counted(ticks, 'marca recibida', 'marcas recibidas', ways)}; las de aquí se conservan.`,
        ...(spoilages > 0
          ? [
              `Allí se ${spoilages === 1 ? 'estropeó' : 'estropearon'} ${counted(spoilages, 'copia', 'copias', ways)}, que se ${spoilages === 1 ? 'puede' : 'pueden'} imprimir otra vez.`,
            ]
          : []),
      ].join(' '),
    aside: (run, why) =>
      `${why === 'unknown' ? `${run} no está en este dispositivo` : run}: se apartó en la sala Planchado.`,
  },
  received: (when) => `Recibida ${when}`,
  receivedHint:
    'Esta tirada vino de otro dispositivo, que guarda su película y la cierra. Hay que marcar aquí y devolver las marcas.',
  handBack: (count, ways) => (count === 0 ? 'Devolver las marcas' : `Devolver ${whole(count, ways)} nuevas`),
  remove: 'Quitar de este dispositivo',
  removed: (run) => `${run} ya no está en este dispositivo. Lo marcado queda, por si vuelve.`,
  aside: 'Apartado',
  asideOf: (run, ticks, spoilages, when, ways) =>
    `${run}: ${counted(ticks, 'marca', 'marcas', ways)}${spoilages > 0 ? `, ${counted(spoilages, 'copia estropeada', 'copias estropeadas', ways)}` : ''}; traspasado ${when}.`,
  asideWhy: {
    unknown: 'Esa tirada no está en este dispositivo. Hay que recibir primero la tirada.',
    draft: 'Esa tirada es aquí otra vez un borrador. Hay que bloquearla primero.',
    changed: 'Esa tirada se bloqueó aquí de nuevo: las marcas de tareas que ya no existen no cuentan.',
    closed: 'Esa tirada ya está cerrada aquí. Recibidas, las marcas quedan con ella; sigue cerrada.',
  },
  takeAside: 'Recibirlas',
  dropAside: 'Descartar',
  dropped: 'Descartado. Deshacer lo recupera.',
  asideTaken: 'Recibido.',
};
