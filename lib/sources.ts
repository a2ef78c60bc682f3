/**
 * The publications that the course cites: what a reader needs to find them in a library. Where a
 * value stands inside one, and how we know it, is said beside the value.
 */
interface Source {
  title: string;
  publisher: string;
  edition?: string;
  /** CSL type, for the reference list that reviewers download. */
  type: 'standard' | 'legislation' | 'report' | 'book' | 'article-journal' | 'webpage' | 'document';
  /** What it is to a learner, in a few words. */
  is: string;
  /** An authority, or at most a check on arithmetic. */
  weak?: true;
}

export const sources = {
  'aws-d1.1': {
    title: 'AWS D1.1/D1.1M, Structural Welding Code: Steel',
    publisher: 'American Welding Society',
    edition: '2000 to 2020; the edition is named with each value',
    type: 'standard',
    is: 'the structural welding code for steel buildings',
  },
  'aws-a5.1': {
    title:
      'AWS A5.1/A5.1M, Specification for Carbon Steel Electrodes for Shielded Metal Arc Welding',
    publisher: 'American Welding Society',
    type: 'standard',
    is: 'what the digits on an electrode promise',
  },
  'aws-a3.0': {
    title: 'AWS A3.0M/A3.0, Standard Welding Terms and Definitions',
    publisher: 'American Welding Society',
    type: 'standard',
    is: 'the words of the trade',
  },
  'aws-a2.4': {
    title: 'AWS A2.4, Standard Symbols for Welding, Brazing, and Nondestructive Examination',
    publisher: 'American Welding Society',
    type: 'standard',
    is: 'the welding symbols on drawings',
  },
  'aws-d3.6': {
    title: 'AWS D3.6M, Underwater Welding Code',
    publisher: 'American Welding Society',
    type: 'standard',
    is: 'its position figures repeat the definitions of axis and face rotation',
  },
  'asme-ix': {
    title:
      'ASME Boiler and Pressure Vessel Code, Section IX: Welding, Brazing, and Fusing Qualifications',
    publisher: 'American Society of Mechanical Engineers',
    type: 'standard',
    is: 'how welders are qualified for boilers, vessels and pressure piping',
  },
  'asme-ix-interpretations': {
    title: 'ASME Section IX Interpretations',
    publisher: 'American Society of Mechanical Engineers',
    type: 'standard',
    is: 'answers of the code committee to questions',
  },
  'asme-b31.3': {
    title: 'ASME B31.3, Process Piping',
    publisher: 'American Society of Mechanical Engineers',
    edition: '1996; row 5 as noted in 2016',
    type: 'standard',
    is: 'the code for process piping',
  },
  'asme-b36.10': {
    title: 'ASME B36.10M, Welded and Seamless Wrought Steel Pipe',
    publisher: 'American Society of Mechanical Engineers',
    type: 'standard',
    is: 'sizes and schedules of steel pipe',
  },
  'asme-b16.25': {
    title: 'ASME B16.25, Buttwelding Ends',
    publisher: 'American Society of Mechanical Engineers',
    edition: '2012 and 2017',
    type: 'standard',
    is: 'how pipe ends are beveled',
  },
  'aisc-360': {
    title: 'ANSI/AISC 360, Specification for Structural Steel Buildings',
    publisher: 'American Institute of Steel Construction',
    edition: '2005 to 2022; the edition is named with each value',
    type: 'standard',
    is: 'design of steel buildings, weld sizes and strength among it',
  },
  'aisc-examples': {
    title: 'Companion to the AISC Steel Construction Manual, Vol. 1: Design Examples, v16.0',
    publisher: 'American Institute of Steel Construction',
    type: 'report',
    is: 'worked examples for the design of steel connections',
  },
  'iso-6947': {
    title: 'ISO 6947, Welding and allied processes: Welding positions',
    publisher: 'International Organization for Standardization',
    edition: '2011',
    type: 'standard',
    is: 'welding positions by slope and rotation',
  },
  'iso-2401': {
    title:
      'ISO 2401, Covered electrodes: Determination of the efficiency, metal recovery and deposition coefficient',
    publisher: 'International Organization for Standardization',
    type: 'standard',
    is: 'how the metal that an electrode gives is measured',
  },
  'iso-tr-17671-1': {
    title:
      'ISO/TR 17671-1, Welding: Recommendations for welding of metallic materials, Part 1 (text of EN 1011-1)',
    publisher: 'International Organization for Standardization',
    type: 'standard',
    is: 'thermal efficiencies of welding processes',
  },
  'iso-13916': {
    title:
      'ISO 13916, Welding: Measurement of preheating temperature, interpass temperature and preheat maintenance temperature',
    publisher: 'International Organization for Standardization',
    type: 'standard',
    is: 'where and when preheat is measured',
  },
  'iec-60974-1': {
    title: 'IEC 60974-1, Arc welding equipment, Part 1: Welding power sources',
    publisher: 'International Electrotechnical Commission',
    type: 'standard',
    is: 'what a welding power source’s rating plate means',
  },
  'en-1011-2': {
    title:
      'EN 1011-2, Welding: Recommendations for welding of metallic materials, Part 2: Arc welding of ferritic steels',
    publisher: 'European Committee for Standardization',
    type: 'standard',
    is: 'preheat and cooling time of ferritic steels',
  },
  'carbon-equivalent-guide': {
    title:
      'TWI FAQ: What is the difference between the various carbon equivalent formulae used in relation to hydrogen cracking?',
    publisher: 'The Welding Institute',
    type: 'webpage',
    is: 'which carbon equivalent was made for which steels',
  },
  'plate-handbook': {
    title: 'Welding Handbook: A guide to better welding of high strength plate steels, edition 2',
    publisher: 'a plate maker’s handbook',
    type: 'book',
    is: 'a steel maker’s handbook with heat input and cooling time formulas',
  },
  'filler-handbook': {
    title: 'Filler Metal Data Handbook',
    publisher: 'a filler metal maker’s handbook',
    type: 'book',
    is: 'weights of weld metal per foot, electrode digits, consumption',
  },
  'filler-table': {
    title: 'Weight of weld metal deposited, reprinted US shop table',
    publisher: 'a supplier’s reprint',
    type: 'webpage',
    is: 'fillet weights per foot with electrodes to buy',
  },
  'navsea-248': {
    title: 'NAVSEA Technical Publication S9074-AQ-GIB-010/248, Revision 1',
    publisher: 'Naval Sea Systems Command',
    edition: 'Revision 1',
    type: 'report',
    is: 'the US Navy’s requirements for welding procedure and performance qualification',
  },
  'ti-809-26': {
    title: 'TI 809-26, Welding: Design Procedures and Inspections',
    publisher: 'US Army Corps of Engineers',
    edition: '1 March 2000',
    type: 'report',
    is: 'a public digest of structural welding rules',
  },
  'ufgs-05090a': {
    title: 'UFGS 05090A, Welding, Structural',
    publisher: 'US Government guide specification',
    type: 'report',
    is: 'a government specification with heat input limits',
  },
  'osha-1910-133': {
    title: '29 CFR 1910.133, Eye and face protection',
    publisher: 'Occupational Safety and Health Administration',
    type: 'legislation',
    is: 'the least filter shade by law',
  },
  'osha-1910-252': {
    title: '29 CFR 1910.252, Welding, cutting and brazing: General requirements',
    publisher: 'Occupational Safety and Health Administration',
    type: 'legislation',
    is: 'fire prevention and ventilation',
  },
  'osha-1910-253': {
    title: '29 CFR 1910.253, Oxygen-fuel gas welding and cutting',
    publisher: 'Occupational Safety and Health Administration',
    type: 'legislation',
    is: 'cylinders, hoses and torches',
  },
  'osha-1910-254': {
    title: '29 CFR 1910.254, Arc welding and cutting',
    publisher: 'Occupational Safety and Health Administration',
    type: 'legislation',
    is: 'open-circuit voltage and equipment',
  },
  'osha-1910-243': {
    title: '29 CFR 1910.243, Guarding of portable powered tools',
    publisher: 'Occupational Safety and Health Administration',
    type: 'legislation',
    is: 'guards on hand grinders',
  },
  'osha-1910-215': {
    title: '29 CFR 1910.215, Abrasive wheel machinery',
    publisher: 'Occupational Safety and Health Administration',
    type: 'legislation',
    is: 'bench grinders',
  },
  'osha-1910-151': {
    title: '29 CFR 1910.151, Medical services and first aid',
    publisher: 'Occupational Safety and Health Administration',
    type: 'legislation',
    is: 'eyewash near corrosives',
  },
  'osha-1910-132': {
    title: '29 CFR 1910.132, Personal protective equipment: General requirements',
    publisher: 'Occupational Safety and Health Administration',
    type: 'legislation',
    is: 'assessing which protection is needed',
  },
  'osha-1910-1200': {
    title: '29 CFR 1910.1200, Hazard communication',
    publisher: 'Occupational Safety and Health Administration',
    type: 'legislation',
    is: 'safety data sheets',
  },
  'osha-1926-351': {
    title: '29 CFR 1926.351, Arc welding and cutting (construction)',
    publisher: 'Occupational Safety and Health Administration',
    type: 'legislation',
    is: 'holders, cables, returns',
  },
  'osha-1926-62': {
    title: '29 CFR 1926.62, Lead (construction)',
    publisher: 'Occupational Safety and Health Administration',
    type: 'legislation',
    is: 'lead paint on old steel',
  },
  '29-cfr-29': {
    title: '29 CFR part 29, Labor standards for the registration of apprenticeship programs',
    publisher: 'US Department of Labor',
    edition: '1984, and the Department’s summary; a newer text is in force',
    type: 'legislation',
    is: 'what a registered apprenticeship must hold',
  },
  'onet-51-4121': {
    title: 'O*NET OnLine, 51-4121 Welders, Cutters, Solderers, and Brazers',
    publisher: 'US Department of Labor',
    type: 'webpage',
    is: 'tasks of welders by importance',
  },
  'onet-25-1194': {
    title: 'O*NET OnLine, 25-1194 Career/Technical Education Teachers, Postsecondary',
    publisher: 'US Department of Labor',
    type: 'webpage',
    is: 'tasks of those who teach a trade',
  },
  'nfpa-51b': {
    title: 'NFPA 51B, Standard for Fire Prevention During Welding, Cutting, and Other Hot Work',
    publisher: 'National Fire Protection Association',
    edition: '2019',
    type: 'standard',
    is: 'the fire watch',
  },
  'ansi-z49.1': {
    title: 'ANSI Z49.1, Safety in Welding, Cutting, and Allied Processes',
    publisher: 'American Welding Society',
    type: 'standard',
    is: 'safe practice in welding, shade guide among it',
  },
  'cal-t8-3382': {
    title: 'California Code of Regulations, Title 8, section 3382, Eye and face protection',
    publisher: 'State of California',
    type: 'legislation',
    is: 'an older, darker shade scheme',
  },
  nec: {
    title: 'NFPA 70, National Electrical Code',
    publisher: 'National Fire Protection Association',
    type: 'standard',
    is: 'resistance of copper conductors',
  },
  'iec-60228': {
    title: 'IEC 60228, Conductors of insulated cables',
    publisher: 'International Electrotechnical Commission',
    type: 'standard',
    is: 'resistance of cable by its cross section',
  },
  'astm-e340': {
    title: 'ASTM E340, Standard Practice for Macroetching Metals and Alloys',
    publisher: 'ASTM International',
    type: 'standard',
    is: 'etching a section',
  },
  'astm-e407': {
    title: 'ASTM E407, Standard Practice for Microetching Metals and Alloys',
    publisher: 'ASTM International',
    type: 'standard',
    is: 'etchants and their cautions',
  },
  'bead-overlap-study': {
    title:
      'D. Ding, Z. Pan, D. Cuiuri, H. Li: A multi-bead overlapping model for robotic wire and arc additive manufacturing',
    publisher: 'Robotics and Computer-Integrated Manufacturing 31, 101–110',
    edition: '2015',
    type: 'article-journal',
    is: 'when beads side by side give a flat layer',
  },
  'flat-top-study': {
    title:
      'S. Suryakumar et al.: Weld bead modeling and process optimization in hybrid layered manufacturing',
    publisher: 'Computer-Aided Design 43',
    edition: '2011',
    type: 'article-journal',
    is: 'the two-thirds spacing of a flat top',
  },
  'power-source-manuals': {
    title: 'Operating manuals of arc welding power sources',
    publisher: 'machine makers; the paragraph is named with each value',
    type: 'document',
    is: 'how a maker explains duty cycle and rating plate',
  },
  'owner-manuals': {
    title: 'Owner’s manuals of two small stick machines',
    publisher: 'machine makers',
    type: 'document',
    is: 'two makers’ advice on current and arc length, which differ',
  },
  'od-1651': {
    title: 'Welding Operations I, subcourse OD1651',
    publisher: 'US Army Ordnance',
    type: 'report',
    is: 'an Army correspondence course on arc welding',
  },
  'fabricator-procedure': {
    title: 'Attachment to a bridge fabricator’s welding procedure specification',
    publisher: 'a fabricator',
    type: 'document',
    is: 'heat input limits as one shop writes them by AWS D1.5',
    weak: true,
  },
  'worked-examples': {
    title: 'Heat input examples on tutorial and forum pages',
    publisher: 'various',
    type: 'webpage',
    is: 'arithmetic that somebody else did',
    weak: true,
  },
  'martello-toth-1990': {
    title:
      'S. Martello, P. Toth, Lower bounds and reduction procedures for the bin packing problem, Discrete Applied Mathematics 28',
    publisher: 'Elsevier',
    edition: '1990',
    type: 'article-journal',
    is: 'the fewest bars that any cutting plan can need',
  },
  'gupta-ho-1999': {
    title:
      'J. N. D. Gupta, J. C. Ho, A new heuristic algorithm for the one-dimensional bin-packing problem, Production Planning & Control 10',
    publisher: 'Taylor & Francis',
    edition: '1999',
    type: 'article-journal',
    is: 'filling one bar after the other as full as it gets',
  },
  gate: {
    title: 'Graduate Aptitude Test in Engineering, papers in mechanical and production engineering',
    publisher: 'Indian Institutes of Technology',
    type: 'document',
    is: 'exam problems, as a check on arithmetic',
    weak: true,
  },
  'common-practice': {
    title: 'Common practice of the trade',
    publisher: 'no publication',
    type: 'document',
    is: 'what shops do, without a source',
    weak: true,
  },
  geometry: {
    title: 'Geometry and arithmetic',
    publisher: 'derived on this site',
    type: 'document',
    is: 'follows from the definitions; anybody can redo it',
  },
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;
/** What is known of a publication. */
export const sourceOf = (id: SourceId): Source => sources[id];
/** Whether a text is the id of a publication in the list. */
export const isSource = (id: string): id is SourceId => Object.hasOwn(sources, id);
