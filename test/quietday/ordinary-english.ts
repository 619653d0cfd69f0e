// What people say of a day's work in English that holds a word of need, and needs nobody. Invented.

export const ordinaryEnglish: readonly string[] = `
fire extinguisher checked
the phone is not answering
new fire extinguisher by the door
fire extinguishers inspected, tags signed
fire drill at 10
fire drill went well
fire alarm test at noon
fire alarm tested
fire door was propped open
fire door closes again
the printer is not responding in the office
fire blanket is in the cabinet
fire watch until six
fire marshal comes on Thursday
fire point 3 has a new sign
fire training for the new hand next week
supplier isn't answering
fire certificate is in the folder
fire brigade visits next month
no fire
no fire in the booth
there was no fire
it was not a fire
there was a fire in the next town last year
is there a fire drill today
we had a fire here in 2019
in case of fire use the stairs
if there is a fire go to the gate
what to do in a fire
fire up the oven at seven
fire it up when you are ready
fire resistant gloves came in
he quit, they did not fire him
camp fire on Saturday, who comes
the sheet says keep away from fire
no open fire near the booth
small flames on the old heater are normal
pilot flames are blue
burning smell was the neighbour's barbecue
nothing is burning
burning question: who has the gauge
sun is burning today
cutting and burning is forbidden here
it's hot today
hot day
hot day today
hot weather tomorrow
too hot in the canteen
it is hot in here
hot coffee in the canteen
hot lunch at twelve
hot work permit for Tuesday
hot work next door stopped
hot air gun is broken
hot water is back
the oven is hot, ready for the load
is the oven hot yet
plates come out hot, use gloves
hot dip galvanised parts came in
not hot
the pot is not hot
part is still hot, wait
wear the hot gloves
smoke break
smoke break at ten
no smoke
smoke detector battery changed
who smokes near the store again
smoke test of the fan was fine
no smoking sign fell off
smoke free site
burn marks on the old bench
burn in the new lamp
burned the toast
burn off the old paint on Friday
slight burn on the cable drum, replaced
the film must not burn at the edge
down to 20C overnight
down to the last can
down time report is due
down for maintenance on Friday
down the hall on the left
fan is down for service
printer is down
the network is down
temperature is down a bit
humidity is down to 45
the compressor was down yesterday
put it down on the rack
write it down
come down to the office please
slow down with the gun
level is down in tank two
cool down takes an hour
nobody is down
kari was down with a cold
spill kit restocked
spill kit is by the door
spill tray under the pump
spill training on Friday
spill report of last month is filed
spill pallet delivered
coffee spill cleaned up
coffee spill in the canteen
spilled my tea
spilled coffee on the desk
spilled some water
no spill
no spills this week
if you spill something wipe it up
wipe up any spill
eye wash tested
eyewash checked this week
eye protection is mandatory
eye protection ordered
eye test for drivers on Monday
eyes on the scale please
eyes on the schedule
eyes open at the crossing
keep an eye on the pot
keep an eye on the humidity
keep your eyes on the gauge
an eye for detail
by eye it looks fine
bird's eye view of the plan
my eyes are fine
nothing in the eyes
see with your own eyes
help wanted sign
help yourself to cake
can you help me carry the rack
need help with the label printer
kari needs help with the pallet
112 plates in the rack
112 g left in the jar
2384 g in pot 112
rack 112 is full
emergency exit is clear
emergency lights tested
emergency stop tested
collapsed the empty boxes
collapsed cardboard goes outside
the pallet collapsed yesterday
ladder down and stowed
`
  .trim()
  .split('\n');
