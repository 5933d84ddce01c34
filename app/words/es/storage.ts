import type { Words } from '../en';

export const storage: Words['storage'] = {
  quota:
    'El disco está lleno, así que los últimos cambios están solo en la memoria. Hay que liberar espacio y pulsar «Probar otra vez» antes de cerrar esta pestaña.',
  closed:
    'El almacenamiento se cerró desde fuera. Los últimos cambios están solo en la memoria. Hay que pulsar «Probar otra vez».',
  unavailable:
    'Este navegador ya no deja que Rollwright guarde nada. Los últimos cambios están solo en la memoria.',
  blocked:
    'El almacenamiento no responde, así que los últimos cambios están solo en la memoria. Hay que cerrar las demás pestañas de Rollwright y pulsar «Probar otra vez».',
  overtaken:
    'Ahora se trabaja en otra pestaña. Lo último que cambió aquí quizá no se guardó; conviene revisarlo.',
  unknown:
    'Los últimos cambios no se han podido guardar. Siguen en la memoria. Hay que pulsar «Probar otra vez».',
  whyInMemory: {
    unavailable: 'Este navegador no deja que Rollwright guarde nada, como en una ventana privada.',
    blocked:
      'El almacenamiento no responde. Hay que cerrar las demás pestañas de Rollwright y pulsar «Probar otra vez».',
    unreadable:
      'Lo guardado aquí no se puede abrir; queda intacto. Hay que reiniciar el navegador y pulsar «Probar otra vez».',
  },
  inMemory:
    'Se puede trabajar, pero solo en la memoria: todo se pierde al cerrar esta pestaña. Conviene guardar antes una copia de seguridad.',
  gone: 'Los pedidos propios se guardaban en este navegador y su almacenamiento está ahora vacío. Se borró o se dañó. Se puede recuperar una copia de seguridad o una instantánea, o empezar de nuevo.',
  bringBack: 'Buscar qué recuperar',
  startAnew: 'Empezar de nuevo',
  meanwhile:
    'Los pedidos guardados han vuelto. Lo escrito mientras no se guardaba nada es la primera instantánea.',
  retry: 'Probar otra vez',
  opening: 'Abriendo los pedidos…',
};
