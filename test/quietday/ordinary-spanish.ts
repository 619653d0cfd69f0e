// The same in Spanish. Invented.

export const ordinarySpanish: readonly string[] = `
extintor de fuego revisado
no contesta el proveedor
simulacro de fuego a las diez
simulacro de incendio el martes
puerta de incendio cerrada
alarma de incendio probada
no hay fuego
no me contesta el cliente
no hubo fuego
fuego lento para la sopa
prohibido hacer fuego
hubo un incendio en el pueblo de al lado
en caso de incendio salir por el portón
si hay fuego ir al punto de reunión
seguro de incendio renovado
manta contra fuego en el armario
curso de fuego la semana que viene
pintura resistente al fuego
incendio apagado el año pasado
llamas del piloto azules
llamas a kari por teléfono
si llamas al taller avisa
arde el sol hoy
no arde nada
la lija quema los dedos un poco
se quema el pan otra vez
quema de rastrojos prohibida
humo de la barbacoa del vecino
humo del camión en el patio
detector de humo con pila nueva
no hay humo
prueba de humo del ventilador bien
descanso para el humo a las once
espacio sin humo
ojo con la manguera
ojo con el escalón
ojo que mañana no hay nadie
ojo de buey de la puerta limpio
a ojo está bien
echa un ojo a la mezcla
buen ojo para el color
ojos abiertos en el cruce
ojos en la báscula por favor
protección de ojos pedida
gafas para los ojos pedidas
lavaojos probado
lavado de ojos revisado
nada en los ojos
no me duelen los ojos
caliente el café
agua caliente otra vez
hoy está muy caliente el patio
comida caliente a las dos
el horno está caliente y listo
está caliente el horno ya
no está caliente
caliente la pieza, usar guantes
permiso de trabajo en caliente
pistola de aire caliente rota
galvanizado en caliente recibido
mezcla no caliente
calienta el horno a las siete
calienta la comida
se calienta el motor del camión
hierve el agua del café
derrame de café limpiado
derrame de agua en la cocina
kit de derrame repuesto
bandeja de derrame vacía
no hay derrame
sin derrames esta semana
plan de derrame firmado
curso de derrame el lunes
fuga de agua arreglada
fuga de aire del compresor arreglada
vertido en molde terminado
caída de tensión ayer
caída de presión normal
caída de temperatura por la noche
caído el cartel de la puerta
se ha caído la red
la impresora está caída
no se ha caído nadie
nadie caído
ayuda con las etiquetas por favor
ayuda al nuevo con el carro
112 placas en el bastidor
quedan 112 g en el bote
emergencia del simulacro anulada
salida de emergencia libre
luces de emergencia probadas
parada de emergencia probada
botiquín de emergencia repuesto
desmayado no, dormido en el descanso
el aire caliente sube al techo
plato caliente en el comedor
manguera contra incendio enrollada
cuadro de incendio revisado
vertido de pintura vieja al bidón correcto
vertido cero este mes
ojos de gato en la carretera
cuidado con los ojos al soplar
kari está de baja, se ha caído en casa el sábado
la caída del cable es corta
se me cayó el bolígrafo
ayuda de cocina hasta las tres
`
  .trim()
  .split('\n');
