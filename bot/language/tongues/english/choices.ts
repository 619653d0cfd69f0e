// What else may be typed for a choice, by its slot: beside the word itself, which every tongue's small words lead to.

import type { SlotName } from '../../../../core/commands.ts';
import { grits, surfaceGrades } from '../../../../core/grades.ts';

/** By what is chosen, the words for it. */
type Choices = Readonly<Partial<Record<SlotName, Readonly<Record<string, string>>>>>;

/** Sa 2½, however its half is typed; SSPC's own with its name before it. */
const grades = {
  'sa2.5': 'sa2,5 sa21/2 sa212',
  ...Object.fromEntries(
    surfaceGrades.filter((grade) => grade.startsWith('sp')).map((grade) => [grade, `sspc${grade}`]),
  ),
};

/** By their short names. */
const solvents = {
  'isopropyl-alcohol': 'ipa isopropanol isopropyl 2-propanol alcohol',
  butoxyethanol: '2-butoxyethanol',
  'methyl-ethyl-ketone': 'mek',
  'methyl-isobutyl-ketone': 'mibk',
  'methoxypropyl-acetate': 'pgmea',
};

const yesOrNo = { true: 'yes on running runs', false: 'no off none without' };

export const englishChoices: Choices = {
  'from-outside': { true: 'nobody-in nobody-in-it nobody-inside' },
  pass: { 'same-coat': 'touchup touched-up' },
  whereabouts: { sprays: 'spray spraying joins', stays: 'stay staying exposed', out: 'moved left gone' },
  'yes-or-no': yesOrNo,
  'fan-state': yesOrNo,
  'rub-result': { 'no-effect': 'ok none', softened: 'soft marked' },
  grade: grades,
  removed: {
    grease: 'degreased oil oil-off without-grease without-oil',
    dust: 'without-dust dusted',
    rust: 'derusted without-rust',
    'old-coat': 'old-paint old-paint-off without-old-coat stripped',
  },
  grit: Object.fromEntries(
    grits.map((grit) => [
      grit,
      `sanded-${grit.slice(1)} sanded-${grit.slice(1)}-grit ${grit.slice(1)}-grit grit-${grit.slice(1)}`,
    ]),
  ),
  'prep-way': { blasting: 'blasted blast', grinding: 'ground grinder', sanding: 'sanded', wiping: 'wiped wipe' },
  handling: { gas: 'argon nitrogen inert' },
  gear: {
    gun: 'guns hose hoses spray',
    vessels: 'vessel pots pot tools cups can cans',
    brush: 'brushes',
    roller: 'rollers tray trays',
    'dip-tank': 'dip dipping tank tanks bath',
    'flow-gear': 'flow pump nozzle',
  },
  solvent: solvents,
  substance: solvents,
  odour: { none: 'odourless odorless no-odour no-odor', noticeable: 'smells odour odor' },
  coupon: { true: 'witness' },
  'water-break': {
    held: 'water-sheets water-break-held water-break-ok water-break-passed',
    broke: 'water-breaks water-break-broke water-break-failed',
  },
  'broke-at': {
    glue: 'glue-failure adhesive',
    'in-coat': 'in-the-coat cohesive',
    'off-metal': 'off-the-metal metal substrate',
  },
  looks: {
    good: 'ok fine clean',
    specks: 'gel-specks speck',
    runs: 'run sags sag',
    lines: 'line',
    bubbles: 'bubble',
    craters: 'crater fisheyes fish-eyes pinholes',
    'bare-spots': 'bare-spot bare missed-spots',
    dirt: 'dust hairs',
    blush: 'blushing haze',
  },
  'filter-material': {
    'glass-fibre': 'glass fibre fibreglass fiberglass fibre-of-glass',
    polypropylene: 'pp',
    'stainless-mesh': 'stainless steel mesh',
  },
  'filtered-into': {
    'second-vessel': 'other-vessel another-vessel second-clean-vessel clean-vessel again-vessel second-pot',
    'same-vessel': 'no-second-vessel without-second-vessel same-pot',
  },
  'vessel-material': { stainless: 'steel inox', hdpe: 'polyethylene pe' },
  step: {
    equipment: 'rated',
    bonding: 'bonded earthed earthing grounded grounding',
    papers: 'instructions sds',
    vessel: 'tools',
    'clean-oven': 'oven',
    'clean-room': 'room',
    alcohol: 'ipa isopropanol isopropyl',
  },
};
