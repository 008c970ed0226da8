import { list } from './list.ts';
import type { Words } from './words.ts';

/** English as it is typed at the roadside. */
export const enWords: Words = {
  // No minus: "12 plus or minus".
  spelling: { denyBefore: ['no'], letters: [['plus or minus', 'about']] },
  cardinals: {
    zero: 0,
    zilch: 0,
    nil: 0,
    nought: 0,
    naught: 0,
    one: 1,
    two: 2,
    three: 3,
    four: 4,
    five: 5,
    six: 6,
    seven: 7,
    eight: 8,
    nine: 9,
    ten: 10,
    eleven: 11,
    twelve: 12,
    thirteen: 13,
    fourteen: 14,
    fifteen: 15,
    sixteen: 16,
    seventeen: 17,
    eighteen: 18,
    nineteen: 19,
    twenty: 20,
    thirty: 30,
    forty: 40,
    fourty: 40,
    fifty: 50,
    sixty: 60,
    seventy: 70,
    eighty: 80,
    ninety: 90,
  },
  scales: { hundred: 100, thousand: 1000, dozen: 12, decade: 10, decades: 10 },
  decimalZero: ['oh', 'o'],
  point: ['point', 'pt', 'dot', 'decimal'],
  joins: ['and', 'n', 'an'],
  articles: ['a', 'an'],
  fractions: {
    tenth: 1 / 10,
    tenths: 1 / 10,
    hundredth: 1 / 100,
    hundredths: 1 / 100,
    half: 1 / 2,
    halves: 1 / 2,
    quarter: 1 / 4,
    quarters: 1 / 4,
  },
  below: [
    'below',
    'below zero',
    'below freezing',
    'degrees below',
    'minus',
    'under freezing',
    'under zero',
    'below nought',
    'below the freezing point',
    'degrees of frost',
    'degrees below freezing',
  ],
  minus: ['minus', 'negative'],
  days: {
    back: {
      today: 0,
      'this morning': 0,
      yesterday: 1,
      'day before yesterday': 2,
      'fortnight ago': 14,
    },
    times: list(`
      yesterday, yesterday evening, yesterday morning, today, tonight, last night, this morning, this evening, in the night, all day
    `),
    day: list(`day, days`),
    week: list(`week, weeks`),
    ago: list(`ago, back`),
    last: list(`last, past, previous`),
    seasons: list(`winter, summer, spring, autumn, fall, Christmas, Easter`),
    weekdays: {},
  },
  ordinals: {
    first: 1,
    second: 2,
    third: 3,
    fourth: 4,
    fifth: 5,
    sixth: 6,
    seventh: 7,
    eighth: 8,
  },
  grouping: ',',
  units: {
    V: list(`
      v, volt, volts, volt dc, vdc, v dc, volts dc
    `),
    mV: [
      'mv',
      'mil',
      'mils',
      'milli',
      'millis',
      'mvolt',
      'mvolts',
      'milivolt',
      'milivolts',
      'millivolt',
      'millivolts',
      'milli volts',
    ],
    A: list(`
      a, amp, amps, ampere, amperes, cca, amps cca, a cca, a en, a on, a at, a when, a with, a in, a
      during, a from, a cranking, a peak, a max, a sae, a din, a jis, amps en, amps sae, amps din
    `),
    kA: ['ka', 'kiloamp', 'kiloamps', 'kiloampere', 'kiloamperes'],
    mA: ['ma', 'milliamp', 'milliamps', 'milliampere', 'milliamperes'],
    'A.h': ['ah', 'amp hours', 'ampere hours'],
    Ohm: ['ω', 'ohm', 'ohms'],
    mOhm: list(`
      mω, mohm, mohms, milliohm, milliohms, milli ohms
    `),
    Cel: list(`
      cel, °c, c, celsius, centigrade, deg c, degrees c, degrees celsius, degrees centigrade
    `),
    '[degF]': list(`
      °f, f, fahrenheit, deg f, degrees f, degrees fahrenheit
    `),
    'N.m': list(`
      nm, n m, newton metre, newton metres, newton meter, newton meters
    `),
    '[lbf_av].[ft_i]': list(`
      lbf ft, lb ft, lbs ft, ft lb, ft lbs, ft lbf, foot pound, foot pounds, pound feet, pound
      foot
    `),
    '[lbf_av].[in_i]': list(`
      lbf in, lb in, in lb, in lbs, inch pound, inch pounds
    `),
    'kgf.m': ['kgf m', 'kg m', 'kgm'],
    ms: ['ms', 'millisecond', 'milliseconds'],
    s: ['s', 'sec', 'secs', 'second', 'seconds'],
    min: ['min', 'mins', 'minute', 'minutes'],
    h: ['h', 'hr', 'hrs', 'hour', 'hours'],
    d: ['day', 'days'],
    wk: ['week', 'weeks'],
    mo: ['month', 'months', 'mo', 'mos', 'mth', 'mths'],
    a: list(`
      year, years, yr, yrs, years old, year old
    `),
    Hz: ['hz', 'hertz'],
    '/min': list(`
      rpm, r min, revs, revs a minute, revs per minute, revolutions a minute
    `),
    L: ['l', 'litre', 'litres', 'liter', 'liters'],
    W: ['w', 'watt', 'watts'],
    kW: ['kw', 'kilowatt', 'kilowatts'],
    bar: ['bar'],
    kPa: ['kpa'],
    '[psi]': ['psi'],
    '%': ['%', 'percent', 'per cent'],
  },
  bareUnits: ['degrees', 'degree', 'deg', '°'],
  boundsOnly: list(`
    less than, lower than, more than, higher than, greater than, under, over, below, above, at
    least, at most, up to, not even
  `),
  nearly: list(`
    just, coming, getting, close, bit, slightly, little, touch, hair, barely, fraction, marginally, shade, smidge, tad, whisker, only just, tiny bit
  `),
  vague: list(`
    few, couple, several, and a bit, and a half bit, and something, and some, and change, something, point something, twelves, elevens, tens, nines, teens, twenties, thirties, forties, digits, odd, and a little, and a fraction, and a bit more, dot something, and a few months, and some months, and a wee bit, and odd, and then some, and a tiny bit, a bit more, a bit over, and a bit over
  `),
  besideFigures: list(`
    mate, dead, flat, pal, buddy, guys, sir, bro, love, man, lol, thx, cheers, ta, to, or, on, at, in, with, while, when, during, after, before, across, from, for, of, as, by, here,
    there, today, outside, exactly, steady, i, it, is, was, were, and, but, then, the, now,
    please, thanks, thank, only, again, ish, or so, say, rest, reading, meter, multimeter,
    voltmeter, total, whole, full, flat, morning, evening, ok, low, high, good, bad, max, min, peak, reads, read, says, shows, showing, sits, measures, measured, gives, replace, recharge, weak, pass, fail, failed, nothing, nothin, nowt, nada, zip, zilch
  `),
  figureWords: {
    asideBefore: list(`
      pin, pins, terminal, terminals, set to, set it to, range of, past, quarter to, cylinder, cylinders, cell, cells, number, model, year, peak, peaked at, peaks at, spiked at, spikes to, spike of, cost me, paid, peaked, peaked near, peaked around, spiked, set on, switched to, turned to, dialled to, floor, level, guarantee, guaranteed, guaranteed for, warranty, warranty of, warranty is
    `),
    asideBehind: list(`
      am, pm, o clock, oclock, this morning, this afternoon, this evening, in the morning, in the afternoon, in the evening, at night, tries, try, times, time, attempts, attempt, goes, cell, cells, cylinder, cylinders, pot, range, scale, setting, dc range, volt range, quid, euro, euros, pounds, dollars, bucks, dollar, big studs, big, large, door, doors, miles, km, metre, metres, meters, feet, foot, measurements, readings, turns, people, leads, wires, studs, digit, digits, counts, amp fuse, a fuse, dc, takes, retries, shots, second mark, guarantee, warranty, years guarantee, years warranty, of guarantee, of warranty, square, squares, mm square, square cable, sq mm, mm2, mm
    `),
    engine: list(`
      engine, petrol, diesel, litre, liter, turbo, tdi, hdi, dci, gasoline, petrol engine, diesel engine, motor
    `),
    instead: list(`
      no, no wait, wait, hang on, hold on, sorry, i mean, i meant, make that, make it, scratch that, strike that, correction, actually, oops, whoops, ups, my mistake, wrong, misread, read it wrong, er, erm, or rather, should be, nope, my bad, call it, lets say, exactly, to be exact, precisely, to be precise, say, lets call it, more exactly, or more like, corrects, corrects me, she says no
    `),
    settles: list(`
      put down, put it down as, lets put, write
    `),
    again: list(`
      twice, 2 times, second time, other time, another time, next time, second try, second go, second measurement, which one, which of, which do i, which should i, which is right, take your pick, pick one, one time
    `),
    unsteady: list(
      `keeps changing, keeps jumping, keeps moving, keeps flicking, jumping between, changing between, flicks between, back and forth, jumps about, jumping about, flips between, flicking between, hops between, swings between, bounces between, between the two, bouncing, all over the place, up and down, swinging, dances between, jumping around, wanders between`,
    ),
    undecided: list(
      `which one is it, which one do you want, which one is right, not sure which, don't know which, dunno which, take your pick, which counts, whichever you want`,
    ),
    between: list(`between, anywhere from, somewhere from`),
    past: list(`
      yesterday, last night, last week, earlier, before, the other day, this morning, was, used to be, the day before, previously, at first, to begin with, used to, before that, was at, had been, last time, to start with, at the start, initially, started at, started out at, was reading, thought it said, had it at, had it, when new, when it was new, i said, the last one, the old one, previous one, the one before
    `),
    present: list(`
      now, today, tonight, right now, at the moment, currently, this morning it is, its now, in the end, at the end, ended up at, ended on, ended at, finally, the last i saw, final reading, last reading, measured properly, properly, done properly, its a proper, outside
    `),
    expected: list(`
      should be, should read, supposed to be, expecting, expected, expect, meant to be, ought to be, hoping for, instead of, rather than, normal is, in place of, versus, vs, compared to, compared with, as against, should have, ought to have, should get, should show, want, wants, wanted, need, needs, ideally, is alright, is ok, limit, limit is, minimum is, usually, normally, book says, the book, spec says, manual says, in the book, forecast said, forecast says, forecast was, predicted
    `),
    felt: list(`
      feels like, felt like, feels more like, wind chill, with the wind, in the wind
    `),
    concludes: list(`
      so, thats, makes it, which makes, so its, so thats, therefore, id go with, going with, go with
    `),
    changes: list(`
      dropped, drops, drop, dropping, fell, falls, falling, fall, went, goes, going, gone, went down, dips, dipped, sank, sinks, sags, sagged, crashed, crashes, plummets, plummeted, plunges, plunged, dives, dived, dove, slumps, slumped, slides, slid, sagging, down to, up to, tumbles, came down, comes down, rose, rises, climbed, climbs, came up, went up, changed, changes, settles at, settled at, settles to, settled to, settles on, settled on, settling at, stays at, up, is up, nosedives, nosedived, jumps, jumped, flicks, flicks up, kicks, shoots, creeps
    `),
    from: list(`
      from
    `),
    until: list(`
      up to
    `),
    barely: [],
    moments: list(`
      while, when, as, whilst, during, with my, with the, with a, once
    `),
    after: list(`
      after, since, following
    `),
    unread: list(`
      ol, o l, overload, over load, overrange, over range, no reading, no readings, nothing on the display, nothing on the screen, nothing on the meter, display is blank, screen is blank, blank display, blank screen, meter shows nothing, meter reads nothing, doesnt show anything, shows nothing, reads nothing, doesnt read anything, wont read, meter is dead, display stays blank, display is dead, dashes, just dashes, keeps jumping, jumps around, jumping around, wont settle, all over the place, no figure, no number, not showing anything
    `),
    thousand: list(
      `k, kv, ka, kilo, kilometer, kilovolt, kilovolts, kiloamp, kiloamps, kiloampere`,
    ),
    display: list(`
      display, screen, meter, multimeter, voltmeter, dmm
    `),
    measured: list(`reads, reading, measured, measures, measure`),
    otherMeters: list(`
      hydrometer, specific gravity, gravity, density, sg, acid, refractometer
    `),
    label: list(`
      label, label says, label reads, sticker, sticker says, nominal, rated, rating, rated at, written on the battery, stamped, nameplate, printed on it, stamped on it, printed on the battery, marked, marked as, on the case, spec, specced, the label, battery says, printed on battery, written on it, says on the battery, battery label, battery is rated, the battery is rated, battery is marked, on the battery it says
    `),
    outOf: list(`
      out of, of, of a possible, from, against
    `),
    above: list(`
      above zero, above freezing, above, plus
    `),
    less: list(`
      less, minus, short of, bar
    `),
    oneBefore: list(`
      about a, one, a full, a whole
    `),
    oneBehind: [],
    cranking: list(`
      crank, start, turn, key, spin
    `),
    standing: list(`
      stood, stand, park, sat, sitting, unused, laid, driven
    `),
    vehicle: list(`
      car, cars, van, vans, truck, trucks, vehicle, vehicles, lorry, motor, motorhome, tractor, bike, pickup, engine, hatchback, hatch, estate, saloon, sedan, suv, ute, camper, minibus, minivan, wagon, convertible, coupe
    `),
    battery: list(`
      battery, batterys, batteries, batt, bat
    `),
    worse: list(`
      worst, worse, higher, highest, bigger, biggest, greater, larger
    `),
    clock: list(`
      half past, quarter past, the time is, time is, time now is, clock says
    `),
    sides: list(`
      plus, minus, positive, negative, pos, neg, red, black, earth, ground, live, other, left, right, one side, on one
    `),
    difference: list(`
      apart, difference, different, differ, diff, gap, between them, of a difference
    `),
    swapped: list(`
      wrong way round, wrong way, wrong way around, other way round, other way around, swapped, reversed, backwards, back to front, crossed, mixed up, switched round, wrong poles, swap, flip, crossed over, other way about, opposite way, polarity, mixed, switched over, round the other way, the wrong leads
    `),
    roughly: list(`
      about, around, roughly, approximately, approx, nearly, almost, not quite, close to, near, near enough, just about, shy of, just shy of, not far off
    `),
    recovers: list(`
      back, again, recover, return, let go, lets go, letting go, let off, lets off, release, bounce, springs up, afterwards, once i stop, when i stop, when she stops, when he stops
    `),
    climbs: list(`
      go, get, climb, rise, come, make, move
    `),
    pair: list(`
      two batteries, two batterys, both batteries, both together, in series, pair of batteries, batteries in series, across the pair, the pair, both, the two, both of them, the two of them, two together, two in a row, two in series, the two in series
    `),
    onto: list(`
      to
    `),
    round: list(`
      whole, round, flat, dead, even, near enough, exactly, ish, or so, dead on, bang on
    `),
    ratedAt: list(`
      on a, out of, of a, for a, off a, on the, from a, its a, it is a, battery of, coil is, coil of
    `),
    allOff: list(`
      everything off, with everything off, everything switched off, everything turned off, all off, with all off, all switched off, all turned off, engine off, ignition off, nothing on, key out, at rest, resting, no load, with no load, off load
    `),
  },
  negators: list(`
    no, not, isnt, arent, wasnt, werent, dont, doesnt, didnt, wont, wouldnt, cant, cannot,
    couldnt, hasnt, havent, hadnt, aint, never, nothing, none, neither, nor, without, shouldnt, nothin, nowt, nobody, nobodys, noones
  `),
  exceptives: {
    behind: list(`nothing, none`),
    between: list(`happens, else, here, left, at, all`),
    words: list(`except, besides`),
  },
  subjects: list(
    `just, only, rather, i, im, ive, we, were, weve, he, hes, she, shes, it, its, they, theyre, theyve, there, theres, thats, everyone, everybody`,
  ),
  asides: list(`
    good morning, good afternoon, good evening, good day, by the way, btw, if that helps, if it helps, if that matters, if it matters,
    in case that helps, in case it helps, in case it matters, before you ask, before anyone asks, before anyone asks me that again, if you want to know,
    if you must know, for what its worth, fwiw, for your information, fyi, for the record, i would say, i'd say, id say, i would guess, i'd guess
  `),
  likewise: [
    'too',
    'as well',
    'also',
    'so do',
    'so does',
    'so is',
    'so are',
    'the same',
    'same',
    'likewise',
    'same with',
    'same for',
    'same goes for',
    'both',
    'do the same',
    'does the same',
    'all the same',
  ],
  exclaims: list(`
    lol, lmao, haha, hahaha, ha, oh, ooh, ah, aha, wow, yay, hooray, phew, whoa, omg, oops, hm, hmm, erm, er, um, uh, ok, okay, right, well, actually, wait, hang on, hold on, sorry, cheers, thanks, thank you, hey, yes, yep, all good, ignore me, mate, god, blimey, stop
  `),
  untried: list(`
    by itself, by its self, on its own, on it's own, all by itself, of its own accord, forget
    it, forget that, forget all that, forget about it, forget this, forget it all, never mind,
    nevermind, no need, not needed, no need any more, dont need, dont bother, no longer needed,
    too late for that, cancel that, scrap that, leave it, drop it, false alarm, nvm, nm, before i could,
    before i even, before i got, before i tried, without doing anything, without touching
    anything, didnt do anything, did nothing, hadnt even, havent even, didnt even, no idea why,
    dont know why, out of nowhere, out of the blue, miraculously, while i was, while we were,
    while waiting, just as i was, just left it, problem solved, all sorted, panic over, call it
    off, hold everything, hold on, hang on, you wont believe it, stop the presses
  `),
  runsOn: list(`
    in my, in the, in a, in an, in his, in her, in our, into my, into the, into a, inside my, my, his, her, our, its a, it is a, thats a, is a, was a, takes, needs, should be, instead of, rather than, filled the, fill the
  `),
  sayings: list(`
    for a smoke, had a smoke, having a smoke, have a smoke, quick smoke, smoke break, need a smoke, a cigarette, my cigarette,
    smoke ? no, fire ? no, flames ? no, leak ? no, lorry here, truck here, hgv here,
    fires, belt broke, belt broken, belt is broken, belts broken, belt has broken, belt snapped,
    belt has snapped, an arm and a leg, pulling my leg, between you and me
  `),
  price: list(`
    cost, price, expensive, how much do you, how much will, how much is it, set me back, the bill
  `),
  rails: list(`train, trains, tram, tracks, rails, railway, level crossing`),
  whether: ['if', 'whether'],
  alternatives: list(`or, either`),
  turns: list(
    `sometimes, some times, other times, at times, one time, another time, half the time, the other half, one minute, the next`,
  ),
  perhaps: list(`maybe, might, perhaps, possibly, could be, may be`),
  clauseBreaks: list(`
    but, and, then, when, while, if, because, though, although, yet, instead
  `),
  fillers: list(`
    a, an, the, it, its, is, are, was, were, be, been, there, theres, i, im, ive, id, we, my,
    me, this, that, thats, they, them, theyre, of, to, at, in, all, any, some, so, and, then,
    just, only, really, quite, very, well, um, uh, er, hmm, please, think, thinks, guess, seems,
    seem, looks, look, like, about, around, roughly, approximately, approx, circa, maybe,
    perhaps, probably, nearly, almost, bit, now, does, do, did, has, with, for, from, sort,
    kind, let, lets, sorry, hi, hello, thanks
  `),
  courtesies: list(`
    thank, thanks, thank you, you, ta, cheers, please, mate, pal, buddy, bro, sir, love, man, dude, boss, for, oh, ah, well, then, friend, guys
  `),
  endings: list(`
    ingly, ings, ing, edly, ed, ey, es, ly, s, y, e
  `),
  optionWords: list(`
    option, number, answer, choice, no, nr, the, one, and, its, i, think
  `),
  talk: {
    yes: list(`
      it is safe here, i read it, i have read everything, i have read them, i have read all of it, we are safe, i am safe, i will be careful, safe here, safe to go on,
      yes, y, yeah, yep, yup, yes it is, yes i have, yes please, ok, okay, sure, of course,
      correct, right, confirm, confirmed, i confirm, understood, got it, go on, go ahead, carry
      on, continue, all clear, safe, it is safe, yes safe to go on, read and understood,
      aye, ya, yea, sure thing, for sure, absolutely, definitely, certainly, indeed, you bet, uh huh, mhm, affirmative, roger, that is right, thats right, by all means, alright, all right, very much so, i do,
      i understand, i have read it, i have read that, have read it, read it, read, that is safe, we are clear, i am clear
    `),
    no: list(`
      no, n, nope, nah, no way, not safe, it is not safe, no it is not, not yet,
      no thank you, no thanks, absolutely not, not really, certainly not, definitely not, of course not, negative, no chance, nay, i dont think so, afraid not, i am afraid not, naw, nae
    `),
    done: list(`
      done, ready, finished, complete, completed, all done, i have done it, i did it, did it,
      have done that, waited, time is up, times up, time up, i have waited, finished waiting
    `),
    over: list(`
      over, it is over, all over, all clear, safe now, it is safe now, we are safe, i am safe,
      gone, it is gone, it has gone, stopped, it has stopped, fire is out, put out, cleared, back
      to normal, no longer, sorted, safe, it is safe, it is safe here, safe here, safe to go on, it
      is safe to go on, everyone is safe, everybody is safe, all safe, all are safe, we are all
      safe, everyone is out and safe, all out and safe, nobody is in danger, no more danger, the
      danger is over, danger has passed, made safe, it has been made safe, dealt with, it has been
      dealt with, help has taken over, the ambulance has taken over, the fire service says it is
      safe, the fire brigade says it is safe, they say it is safe
    `),
    'false-alarm': list(`
      false alarm, it was a false alarm, that was a false alarm, it is a false alarm, just a false
      alarm, sorry false alarm, there never was any danger, there was no danger, there was never
      any danger, there was no emergency, there is no emergency, no emergency, false alert
    `),
    'dont-know': list(`
      dont know, i dont know, do not know, dunno, not sure, unsure, im not sure, no idea, no clue,
      cant tell, cannot tell, cant say, cant remember, dont remember, i forgot, unknown, idk, hard
      to say, who knows, not certain, difficult to tell, beats me, search me, your guess is as good
      as mine, I’ve forgotten, don’t recall, never paid attention, never noticed, didn’t look, I
      wasn’t listening, couldn’t make it out, impossible to tell, no knowledge of that, I’m
      clueless, haven’t the foggiest, it’s unclear to me, undecided, I have no opinion
    `),
    cannot: list(`
      wont switch it off again, wont turn it off again, not switching it off again, not turning it off
      again, wont switch the engine off, wont turn the engine off, not turning the engine off, dont want to
      switch it off again, dont want to turn it off again,
      cant, cannot, can not, i cant, cant do, cant do that, cannot do that, cannot do it, i cant do
      it, not able to, unable, i am unable to, not possible, impossible, cant reach it, cant reach,
      cant get to it, cant find it, cant find, cant see it, not found, not fitted, dont have one,
      dont have that, havent got one, havent got that, skip, skip it, skip this, pass, not here,
      too dangerous, wont do that, i would rather not, lack the equipment, too difficult for me, no
      access, too dark for that, don’t dare, I’d rather not, physically can’t, there isn’t one, not
      equipped with that, hands are too cold, cover won’t come off, that’s beyond me, not doable
    `),
    why: list(`
      why, why that, why this, why do you ask, why do you want to know, why do you need that, why
      is that, why should i, what for, what is that for, what does it mean, what would that mean,
      explain, reason, how come, does that matter, is that relevant, how does that help, how is
      that useful, is this necessary
    `),
    numbers: list(`
      numbers, the numbers, figures, the figures, show numbers, show me the numbers, what numbers,
      where do the numbers come from, where does that number come from,
      how sure, how sure are you, how accurate, how accurate is that, how exact is that, sources,
      what is expected, what should it be, where are the volts lost, where do the volts go
    `),
    back: list(`
      back, go back, previous, previous question, one back, last question, undo, take that back,
      step back, return, back up, rewind, return to the former question, reverse a step, earlier
      question, go backwards, show previous, previous step, prior question
    `),
    repeat: list(`
      repeat, again, once more, say again, say that again, what do you mean, what was the question,
      pardon, repeat that, repeat the question, come again, could you repeat,
      ask me again, I didn’t understand, don’t understand the question, rephrase it, say it
      differently, huh, read it out again, tell me again, put it more simply, simpler please, in
      plain words, not following you
    `),
    person: list(`
      person, a person, human, operator please, someone, real person, talk to a person, talk to
      someone, speak to a person, speak to someone, talk to a human, speak to a human, talk to a
      real person, call someone, call me, i want a person, i need a person, i want to talk to a
      person, i want to speak to someone, get me a person, need help from a person, let me speak to
      somebody, are you a robot, agent, connect me to an agent, put me through, put me through to
      someone, call centre, phone number please, get a technician on the line, live chat, human
      being, a real human please, staff member, talk to your colleague, transfer me, hand me over,
      call me back, I’d like a callback, supervisor, advisor please
    `),
    stop: list(`
      stop, quit, exit, end, bye, goodbye, stop here, stop now, i want to stop, leave, pause,
      later, come back later, enough, cancel, give up, i give up, abort, leave me alone, end the
      conversation, close the chat, terminate, no more questions, stop asking, never
      mind, cheerio, end chat, finish here, call it a day, I’ve had enough
    `),
    language: list(`
      language, change language, other language, another language, switch language, different
      language
    `),
  },
  retractions: list(`
    nonsense, thats nonsense, that is nonsense, rubbish, thats rubbish, bullshit, that was wrong,
    thats wrong, that is wrong, wrong, not true, thats not true, that is not true, you got me
    wrong, you got that wrong, you misunderstood, you misunderstood me, you misunderstand,
    misunderstanding, a misunderstanding, not what i meant, thats not what i meant, that is not
    what i meant, not what i said, thats not what i said, i never said that, i didnt say that, i
    did not say that, i did not mean that, i didnt mean that, my mistake, mistake, it was a
    mistake, that was a mistake, by mistake, nothing like that
  `),
  neverWas: list(`
    there was no, there wasnt any, there was not any, there wasnt a, there never was, there was
    never, there has never been, there were no, there were never, there werent any, was no, wasnt
    any, never was, never any, it wasnt, it was not, that wasnt, that was not, never saw any, i
    never said, i didnt say, i did not say, i never had
  `),
  corrections: list(`
      correct, correction, i correct, i want to correct, change, change that, i meant, meant, sorry
      i meant, i mean, should be, should have been, that was wrong, wrong, my mistake, mistake,
      typo, actually, I was wrong, I made a mistake, that was a mistake, my mistake, I misspoke,
      not what I meant, scratch that, strike that, let me rephrase, change my answer, I want to
      change my answer, oops wrong, I mistyped, mixed it up, I got it mixed up, that was incorrect,
      I answered wrongly, amend my answer, forget what I said, I told you wrong, ignore my last
      answer, I was mistaken, edit answer
    `),
  earlier: ['was', 'were', 'should be', 'should have been'],
  statements: [
    {
      set: { 'vehicle.nominal': 24 },
      said: list(`
        24 v vehicle, 24 v system, 24 v truck, 24 v lorry, 24 v bus, 24 volt vehicle, 24 volt
        system, 24 volt truck, 24 volt lorry, 24 volt bus, vehicle is 24 v, vehicle is 24 volts,
        truck is 24 v, truck is 24 volts, twenty four volt vehicle, twenty four volt truck,
        twenty four volt system
      `),
    },
    {
      set: { 'vehicle.nominal': 12 },
      said: list(`
        12 v vehicle, 12 v system, 12 v car, 12 volt vehicle, 12 volt system, 12 volt car,
        vehicle is 12 v, vehicle is 12 volts, twelve volt vehicle, twelve volt system
      `),
    },
    {
      set: { 'vehicle.fuel': 'diesel' },
      said: list(`
        diesel, it is a diesel, diesel engine, runs on diesel, diesel car, diesel vehicle
      `),
    },
    {
      set: { 'vehicle.fuel': 'petrol' },
      said: list(`
        petrol, petrol engine, runs on petrol, petrol car, petrol vehicle, gasoline, gasoline
        engine
      `),
    },
    {
      set: { 'vehicle.transmission': 'automatic' },
      said: ['automatic', 'automatic gearbox', 'automatic transmission', 'it is an automatic'],
    },
    {
      set: { 'vehicle.transmission': 'manual' },
      said: ['manual', 'manual gearbox', 'manual transmission', 'stick shift', 'it is a manual'],
    },
    {
      set: { 'vehicle.ignition': 'button' },
      said: ['start button', 'push button start', 'button start', 'it has a start button'],
    },
    { set: { 'vehicle.ignition': 'key' }, said: ['key start', 'it starts with a key'] },
    {
      set: { 'meter.class': 'simple' },
      said: list(`
        simple meter, cheap meter, my meter is cheap, it is a cheap meter, cheap multimeter, simple
        multimeter, cheap voltmeter
      `),
    },
    {
      set: { 'meter.class': 'fine' },
      said: list(`
        good meter, fine meter, accurate meter, precise meter, my meter is accurate, expensive
        meter, calibrated meter, good multimeter, accurate multimeter
      `),
    },
    {
      set: { 'vehicle.hybrid': 'full' },
      said: ['hybrid', 'full hybrid', 'it is a hybrid', 'hybrid car'],
    },
  ],
  accuracy: {
    meter: ['meter', 'voltmeter', 'multimeter', 'dmm'],
    clamp: ['clamp', 'clampmeter'],
    percent: ['%', 'percent'],
    counts: ['counts', 'count'],
  },
  speaking: list(`
    speak, speaking, talk, talking, continue, write, understand, know, switch, to, in, into, using
  `),
  having: list(`
    have, ive, got, found, borrowed, bought, brought, with me, now have, here is, there is,
    arrived, here now, can use
  `),
  kit: {
    voltmeter: ['voltmeter', 'volt meter', 'multimeter', 'multi meter'],
    'test-lamp': ['test lamp', 'test light', 'testlamp'],
    'clamp-meter': ['clamp meter', 'current clamp', 'amp clamp'],
    'load-tester': ['load tester', 'carbon pile'],
    'electronic-tester': ['electronic tester', 'battery tester', 'conductance tester'],
    'boost-source': list(`
      jump leads, jumper leads, jumper cables, jump cables, jump pack, jump starter, booster
      pack, boost source, donor car
    `),
    charger: ['charger', 'battery charger'],
    'code-reader': ['code reader', 'fault code reader', 'scan tool'],
    'second-key': ['second key', 'spare key', 'other key'],
    helper: ['helper', 'someone to help', 'somebody to help', 'friend to help', 'second person'],
    'hand-tools': list(`
      hand tools, tools, spanners, wrenches, tool box, toolbox
    `),
    'bench-tester': ['bench tester', 'test bench'],
  },
};
