import type { PracticeWords } from './practice.ts';

/** What bounds go by, in Arabic. */
export const ar: PracticeWords = {
  '0.2 V above a full battery (TM 5-3805-262-20 para 5-9: 12.6 V and above; TM 9-6115-730-24 WP 0050: agm 12.8 to 13.0 V)':
    'فوق جهد البطارية الممتلئة بمقدار \u20660.2 V\u2069 (\u2066TM 5-3805-262-20 para 5-9\u2069: \u206612.6 V\u2069 فأكثر؛ \u2066TM 9-6115-730-24 WP 0050\u2069: من 12.8 إلى \u206613.0 V\u2069 لبطارية \u2066AGM\u2069)',
  'only what charges keeps a battery above 13.4 to 13.8 V':
    'لا يُبقي البطارية فوق 13.4 إلى \u206613.8 V\u2069 إلا ما يشحنها',
  'nearly empty; TM 9-6140-200-14: a discharged battery can freeze at -12 °C':
    'فارغة تقريبًا؛ \u2066TM 9-6140-200-14\u2069: قد تتجمد البطارية المفرغة عند \u2066-12 °C\u2069',
  'all lamps and windows on: near 12 V is good, below 11 V is not':
    'كل المصابيح وتدفئة الزجاج مشغلة: قرب \u206612 V\u2069 جيد، ودون \u206611 V\u2069 ليس جيدًا',
  'where the load-test table of the battery trade ends, -18 °C':
    'حيث ينتهي جدول اختبار الحمل المعروف في المهنة، \u2066-18 °C\u2069',
  '80 % of the label': '80% من المكتوب على الملصق',
  "a battery with one cell of six down; parts supplier's battery warranty guidance: 10.5 V after charging is a shorted cell":
    'بطارية إحدى خلاياها الست ساقطة؛ إرشادات ضمان لمورّد قطع: \u206610.5 V\u2069 بعد الشحن تعني خلية مقصورة',
  'two batteries of one age and charge': 'بطاريتان بالعمر نفسه والشحن نفسه',
  'twice the resistance of a battery that is just worn': 'ضعف مقاومة بطارية بلغت حد التلف',
  'two degrees above the -7 °C at which electrolyte of a gravity of 1.100 freezes (Army correspondence subcourse OD1002, lesson 2)':
    'درجتان فوق \u2066-7 °C\u2069 التي يتجمد عندها سائل كثافته 1.100 (\u2066Army correspondence subcourse OD1002, lesson 2\u2069)',
  'batteries are seldom worn before 2 years and often from 5 years on':
    'نادرًا ما تبلى البطاريات قبل سنتين، وكثيرًا ما تبلى من خمس سنوات فأكثر',
  'one joint; TM 10-3930-671-24: any reading above 0 is poor':
    'وصلة واحدة؛ \u2066TM 10-3930-671-24\u2069: كل قراءة فوق الصفر رديئة',
  '0.2 to 0.3 V in the handbooks': 'من 0.2 إلى \u20660.3 V\u2069 في الكتيبات',
  '0.5 to 0.8 of the battery voltage': 'من 0.5 إلى 0.8 من جهد البطارية',
  '0.5 to 1 V below the rested battery: nothing heavy flows there':
    'من 0.5 إلى \u20661 V\u2069 دون جهد البطارية المرتاحة: لا يمر هناك تيار كبير',
  'above a hold-in winding alone (TM 5-2420-230-24-2 p. 13-33: 13 to 19 A)':
    'فوق تيار ملف التثبيت وحده (\u2066TM 5-2420-230-24-2 p. 13-33\u2069: من 13 إلى \u206619 A\u2069)',
  'normal cranking current by fuel and displacement':
    'تيار الإدارة المعتاد بحسب الوقود وسعة المحرك',
  '1.6 times the normal cranking current by fuel and displacement':
    '1.6 ضعف تيار الإدارة المعتاد بحسب الوقود وسعة المحرك',
  'no more than a full battery with its surface charge':
    'ليس أكثر من بطارية ممتلئة مع شحنتها السطحية',
  '14.8 V; in frost TM 9-6115-464-12, Table 4-5, halved from 24 V':
    '\u206614.8 V\u2069؛ وفي الصقيع \u2066TM 9-6115-464-12, Table 4-5\u2069، نصف ما هو لـ \u206624 V\u2069',
  'frost, from which batteries fail more often': 'الصقيع الذي تكثر معه أعطال البطاريات',
  'from it on cold hinders neither battery nor engine':
    'من هذا الحد لا يعيق البرد البطارية ولا المحرك',
  'plus reads below minus': 'الموجب أدنى من السالب',
  'batteries are judged between freezing and 45 °C':
    'يُحكم على البطاريات بين درجة التجمد و\u206645 °C\u2069',
  'what the surface charge leaves in one to three days':
    'ما تفقده الشحنة السطحية في يوم إلى ثلاثة أيام',
  'more than a clamp meter shows of nothing': 'أكثر مما تُظهره الكماشة حين لا تيار',
  'starters draw 50 A and more running free':
    'يسحب بادئ الحركة \u206650 A\u2069 فأكثر وهو يدور حرًا',
  '2500 to 3500 rpm geared, 6000 rpm and more direct':
    'من 2500 إلى 3500 دورة في الدقيقة بتروس تخفيض، و6000 فأكثر بلا تروس',
  'nuts on copper or brass studs': 'صواميل على براغٍ من النحاس الأحمر أو الأصفر',
  'M6 or M8 bolts of clamps on tapered battery posts':
    'براغي \u2066M6\u2069 أو \u2066M8\u2069 للمرابط على أقطاب مخروطية',
  'what meter and leads pick up, far below any battery':
    'ما يلتقطه الجهاز وأسلاكه، أدنى بكثير من أي بطارية',
  'a battery charged to three quarters or more and rested':
    'بطارية مشحونة إلى ثلاثة أرباعها أو أكثر ومرتاحة',
  'a sound battery gives most of its label': 'البطارية السليمة تعطي معظم ما على ملصقها',
  'a battery that took a full charge, two hours after it': 'بطارية أخذت شحنًا كاملًا، بعد ساعتين منه',
  'two batteries of one age': 'بطاريتان بالعمر نفسه',
  'the rested battery less what its wires and switches take':
    'البطارية المرتاحة ناقص ما تأخذه الأسلاك والمفاتيح',
  'cranking-circuit model of a sound vehicle: battery by its label, charge, age and temperature, usual cables, starter and engine':
    'نموذج دائرة التشغيل لمركبة سليمة: بطارية بحسب ملصقها وشحنها وعمرها وحرارتها، وكوابل وبادئ ومحرك معتادة',
  'usual resistance of the sound part times the measured current':
    'المقاومة المعتادة للجزء السليم مضروبة في التيار المقيس',
  'T = K·F·d with 75 % of the proof load of ISO 898-1 (from memory) and K from an engineering article on tightening torque, T = K·F·d':
    '\u2066T = K·F·d\u2069 مع 75% من حمل الاختبار في \u2066ISO 898-1\u2069 (من الذاكرة)، و\u2066K\u2069 من مقال هندسي عن عزم الشد',
  "the maker's figure for this part": 'رقم الصانع لهذه القطعة',
};
