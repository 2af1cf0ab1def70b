package halfwave.message;

/**
 * What can be said. The sentence of each key, in each language, stands in the bundle {@code
 * halfwave/display/sentences} under {@code message.} and the key's name in lower case with hyphens.
 * Arguments are listed here in their order.
 */
public enum MessageKey {
  /** A finite number. */
  ALLOWED_FINITE,
  /** A finite number above zero. */
  ALLOWED_POSITIVE,
  /** A finite number, zero or above. */
  ALLOWED_NOT_NEGATIVE,
  /** Ohms, zero or above, or open. */
  ALLOWED_RESISTANCE,
  /** A number in a range: lowest, highest. */
  ALLOWED_RANGE,
  /** A list with enough entries: least count. */
  ALLOWED_ENTRIES,
  /** A rod that does not run through the burner. */
  ALLOWED_CLEAR_OF_BURNER,
  /** A name that is not taken and not empty. */
  ALLOWED_NAME,
  /** A value that fits the fields beside it. */
  ALLOWED_CONSISTENT,

  /** A JSON object. */
  ALLOWED_OBJECT,
  /** A JSON list. */
  ALLOWED_LIST,
  /** A JSON list of an exact length: the count. */
  ALLOWED_LIST_OF,
  /** A JSON string. */
  ALLOWED_TEXT,
  /** A whole number. */
  ALLOWED_WHOLE_NUMBER,
  /** True or false. */
  ALLOWED_TRUTH,
  /** One of several words: the words. */
  ALLOWED_ONE_OF,
  /** A file of another kind: the format that is wanted. */
  ALLOWED_KIND,
  /** Something, or null: what else. */
  ALLOWED_OR_NULL,
  /** No other fields than some: their names. */
  ALLOWED_FIELDS,
  /** A field stands once in its object. */
  ALLOWED_ONCE,
  /** Correct JSON to the end of the file: line, column. */
  ALLOWED_JSON,
  /** Nothing after the end of the JSON value: line, column. */
  ALLOWED_NOTHING_MORE,
  /** A circuit, a list of circuits, or a list of rows. */
  ALLOWED_CIRCUIT_FILE,
  /** A number from one to the count of circuits: the count. */
  ALLOWED_CIRCUIT_NUMBER,
  /** A file that exists. */
  ALLOWED_EXISTING_FILE,
  /** A file, where a folder was named. */
  ALLOWED_FILE_NOT_FOLDER,
  /** A shipped bench or a file that exists: the names of the shipped benches. */
  ALLOWED_BENCH,
  /** A shipped board or a file that exists: the names of the shipped boards. */
  ALLOWED_BOARD,
  /** A board made for a way of lighting: which way, the shipped boards that are. */
  ALLOWED_FITTING_BOARD,
  /** A time and an act: an example. */
  ALLOWED_ACT,
  /** A change of a bench: examples. */
  ALLOWED_CHANGE,
  /** A number in a range, or open: lowest, highest. */
  ALLOWED_RANGE_OR_OPEN,
  /** A time from burner to burner. */
  ALLOWED_CARRY_OVER,
  /** A time in a range: shortest, longest. */
  ALLOWED_TIME,
  /** No further word. */
  ALLOWED_NO_WORD,
  /** A file that can be read. */
  ALLOWED_READABLE_FILE,
  /** A file name with one of some endings: the endings. */
  ALLOWED_ENDING,
  /** A folder that files can be written in. */
  ALLOWED_WRITABLE_FOLDER,
  /** A date as it is typed. */
  ALLOWED_DATE,
  /** A place where a file can be written. */
  ALLOWED_WRITABLE_FILE,
  /** An answer sheet that nobody else has open. */
  ALLOWED_UNSHARED,
  /** A circuit that has a periodic steady state: why this one has none. */
  ALLOWED_SOLVABLE,

  /** Stands for a value that is missing. */
  VALUE_MISSING,
  /** Stands for a value that the file ends or breaks off in. */
  VALUE_BROKEN_OFF,

  /** A bad field: file, field, value, what is allowed. */
  BAD_FIELD,
  /** A bad file: file, what is allowed. */
  BAD_FILE,

  /** A circuit has no steady state by its build: why, part in trouble. */
  SOLVE_IMPOSSIBLE,
  /** A solve failed: why, part in trouble, time within the period, iterations. */
  SOLVE_FAILED,

  /** Bad usage, an argument that nothing expects: command, argument. */
  USAGE_UNKNOWN_ARGUMENT,
  /** Bad usage, something is missing: command, its label. */
  USAGE_MISSING_ARGUMENT,
  /** Bad usage, a value that an option does not take: command, option, value, what is allowed. */
  USAGE_BAD_VALUE,
  /** Bad usage of another kind: command. */
  USAGE_BAD,
  /** An internal failure: what the runtime says. */
  INTERNAL_FAILURE,

  /** The flame: its state, heat input of the burner, primary equivalence ratio. */
  ACCOUNT_FLAME,
  /** There is no flame: its state. */
  ACCOUNT_NO_FLAME,
  /** The rod stands outside the flame. */
  ACCOUNT_ROD_OUT,
  /** Fewer ports where flame meets metal: their share. */
  ACCOUNT_ATTACHMENT,
  /** Scale on the burner face: its resistance. */
  ACCOUNT_SCALE,
  /** Resistance in connector and ground together: how much. */
  ACCOUNT_SERIES_OHMS,
  /** The lead is off. */
  ACCOUNT_LEAD_OFF,
  /** The ground path is open. */
  ACCOUNT_GROUND_LOST,
  /** The rod touches the burner. */
  ACCOUNT_ROD_TOUCHES,
  /** Something joins rod and chassis: its resistance. */
  ACCOUNT_JUMPER,
  /** Something leaks beside the insulation: its resistance. */
  ACCOUNT_LEAKAGE,
  /** A film on the rod: its thickness, the rod's temperature. */
  ACCOUNT_FILM,
  /** A good signal: DC, AC. */
  ACCOUNT_HEALTHY,
  /** A weak signal: DC, AC. */
  ACCOUNT_WEAK,
  /** A signal below what boards hold: DC, AC. */
  ACCOUNT_TOO_WEAK,
  /** Current of the wrong sign: DC, AC. */
  ACCOUNT_REVERSED,
  /** No DC that a meter could show: DC, AC. */
  ACCOUNT_NO_DC,
  /** AC without its share of DC: the path conducts but hardly rectifies. */
  ACCOUNT_CONDUCTS_ONLY,
  /** The circuit has no solution: why, part in trouble. */
  ACCOUNT_UNSOLVED,
  /** While the rod is positive: crest current, largest share's part, its volts, source volts. */
  ACCOUNT_ROD_POSITIVE,
  /** While the rod is negative: crest current, largest share's part, its volts, source volts. */
  ACCOUNT_ROD_NEGATIVE,
  /** Crest current with the rod positive over the other: the ratio. */
  ACCOUNT_RECTIFIES,
  /** Crest current with the rod negative over the other: the ratio. */
  ACCOUNT_RECTIFIES_BACKWARDS,
  /** A rod that was moved: how much of it is in the flame, and how much would be where it was. */
  ACCOUNT_ROD_IN_FLAME,
  /** Crests with the rod positive and negative, and the DC: each here and where it was fitted. */
  ACCOUNT_ROD_MOVED,
  /** The voltmeter: volts with flame, volts with the lead off, DC without it, DC beside it. */
  ACCOUNT_METER,
  /** What the DC depends on: parameter, change of DC per 1 % of it. */
  ACCOUNT_DEPENDS,
  /** The sense circuit has no power. */
  ACCOUNT_NO_POWER,
  /** Nothing burns. */
  ACCOUNT_UNLIT,
  /** Burners burn, but not yet the one at the rod. */
  ACCOUNT_NOT_AT_ROD,
  /** What a flame would give: DC, AC, the board's pick-up. */
  ACCOUNT_IF_LIT,
  /** What leaves the board is a good signal: DC, AC, below what the board calls it weak. */
  ACCOUNT_SENSE_GOOD,
  /** It is a weak signal: DC, AC, the board's drop-out. */
  ACCOUNT_SENSE_WEAK,
  /** It is less than the board needs: DC, AC, the board's drop-out. */
  ACCOUNT_SENSE_SMALL,
  /** It has the wrong sign: DC, AC. */
  ACCOUNT_SENSE_REVERSED,
  /** It is no DC to speak of: DC, AC. */
  ACCOUNT_SENSE_NOTHING,
  /** Something that is not as it should be, by its name: what. */
  ACCOUNT_WRONG,
  /** What the DC depends on, as a line of a list: parameter, change of DC per 1 % of it. */
  ACCOUNT_SWAYS,
  /** No meter is on. */
  ACCOUNT_METER_NONE,
  /** The lead is open while a meter is put in. */
  ACCOUNT_METER_OPENING,
  /** There is no DC that a meter could change. */
  ACCOUNT_METER_IDLE,
  /** The meter hardly changes the DC: without it, with it. */
  ACCOUNT_METER_SLIGHT,
  /** The meter changes the DC: without it, with it. */
  ACCOUNT_METER_LOADS,
  /** With the meter the board has too little: DC without it, with it. */
  ACCOUNT_METER_CUTS,
  /** What the board is doing: its stage. */
  ACCOUNT_BOARD,

  /** Title of a bench's page: its name. */
  REPORT_TITLE,
  /** Heading of the readings. */
  REPORT_READINGS,
  /** Label: microammeter in series. */
  REPORT_SERIES,
  /** Label: voltmeter at the terminal, flame burning. */
  REPORT_TERMINAL,
  /** Label: microammeter while the voltmeter hangs there. */
  REPORT_SERIES_LOADED,
  /** Label: voltmeter with the lead off. */
  REPORT_LEAD_OFF,
  /** Label: voltmeter without a flame. */
  REPORT_FLAME_OUT,
  /** Label: voltmeter from a wire in the flame's root to the rod. */
  REPORT_PROBE,
  /** A DC value: the quantity. */
  REPORT_DC,
  /** An AC value: the quantity. */
  REPORT_AC,
  /** Heading of the voltage ladder. */
  REPORT_LADDER,
  /** Column: rod positive. */
  REPORT_ROD_POSITIVE,
  /** Column: rod negative. */
  REPORT_ROD_NEGATIVE,
  /** Row: the source's voltage, sum of the ladder. */
  REPORT_SOURCE,
  /** Row: flame current at the crest. */
  REPORT_CREST,
  /** Heading of the account in words. */
  REPORT_WHY,
  /** Heading of the cautions. */
  REPORT_CAUTIONS,
  /** How to go on from the first page. */
  REPORT_GO_ON,

  /** Shut off gas and power before opening. */
  CAUTION_GAS_AND_POWER,
  /** Never bypass or jumper a flame safeguard. */
  CAUTION_NEVER_BYPASS,
  /** No meter on a spark electrode. */
  CAUTION_SPARK,
  /** Leave where gas is smelt or an alarm sounds. */
  CAUTION_LEAVE,
  /** Local codes, instructions and a licensed technician decide. */
  CAUTION_CODES,
  /** The simulator teaches and certifies nothing. */
  CAUTION_TEACHING,

  /** A sweep's axis as an option: an example. */
  ALLOWED_AXIS,
  /** One or two axes, of different parameters. */
  ALLOWED_AXES,
  /** A row of a sweep whose bench cannot be: what is allowed. */
  SWEEP_IMPOSSIBLE,
  /** How far a sweep is: rows done, all rows. */
  SWEEP_PROGRESS,
  /** A name with its unit, as a title of an axis: name, unit. */
  CHART_AXIS,
  /** Title of a chart over one parameter: the parameter. */
  CHART_TITLE_ONE,
  /** Title of a chart over two parameters: both. */
  CHART_TITLE_TWO,
  /** Under the title: the bench. */
  CHART_BENCH,
  /** Axis: the current of a meter in series. */
  CHART_CURRENT,
  /** Axis: the same, only its DC. */
  CHART_DC_CURRENT,
  /** Curve: DC. */
  CHART_DC,
  /** Curve: AC. */
  CHART_AC,
  /** Mark: the healthy value of a parameter. */
  CHART_HEALTHY,
  /** Mark: the value that the bench has. */
  CHART_HERE,
  /** Mark: where nothing was read. */
  CHART_NO_READING,
  /** Mark: where the DC has the wrong sign. */
  CHART_REVERSED,
  /** Title of a forecast as a chart. */
  CHART_FORECAST,
  /** Under it: what band and line are. */
  CHART_FORECAST_BAND,
  /** Axis: hours of flame. */
  CHART_FLAME,
  /** Mark: the reading that is too low. */
  CHART_LIMIT,
  /** Mark: the day of service. */
  CHART_SERVICE,
  /** The board has no power. */
  BOARD_POWER_LOST,
  /** Without power a board forgets: for how long. */
  BOARD_FORGOTTEN,
  /** Power is back. */
  BOARD_POWER_BACK,
  /** Power is back too soon to clear a lockout. */
  BOARD_POWER_BACK_LOCKED,
  /** Power is back during a call. */
  BOARD_POWER_BACK_BLOWER,
  /** The blower ran first: for how long. */
  BOARD_RESTARTED,
  /** The board's own test failed. */
  BOARD_INTERNAL,
  /** A call for heat. */
  BOARD_CALL,
  /** The call for heat ends. */
  BOARD_CALL_ENDED,
  /** Self-check passed. */
  BOARD_CHECKED,
  /** The pressure switch is closed before the inducer runs. */
  BOARD_PRESSURE_STUCK,
  /** Line and neutral are swapped. */
  BOARD_LINE_REVERSED,
  /** The pressure switch has closed. */
  BOARD_PRESSURE_PROVED,
  /** The pressure switch did not close: within what time. */
  BOARD_PRESSURE_LATE,
  /** The pressure switch opened. */
  BOARD_PRESSURE_LOST,
  /** A pause after the pressure switch is over. */
  BOARD_PRESSURE_RETRY,
  /** Pre-purge is over: how long. */
  BOARD_PURGED,
  /** Igniter warm-up is over: how long. */
  BOARD_WARMED_UP,
  /** A flame signal: pick-up, time since the valve opened. */
  BOARD_SIGNAL,
  /** The signal fell while proving: drop-out. */
  BOARD_SIGNAL_GONE,
  /** The flame is proved: time since the valve opened. */
  BOARD_PROVED,
  /** A trial failed: its number, most trials, its length. */
  BOARD_TRIAL_FAILED,
  /** The last trial failed: its number, most trials, its length. */
  BOARD_TRIALS_USED_UP,
  /** The flame was lost: drop-out, response time, how many so far. */
  BOARD_FLAME_LOST,
  /** The flame was lost too often: drop-out, response time, how many. */
  BOARD_LOSSES_USED_UP,
  /** A flame has held and clears the count: how long. */
  BOARD_COUNT_CLEARED,
  /** Inter-purge is over: how long. */
  BOARD_INTER_PURGED,
  /** Post-purge is over: how long. */
  BOARD_POST_PURGED,
  /** A flame signal with the valve shut. */
  BOARD_FALSE_FLAME,
  /** The false flame has been gone: how long. */
  BOARD_FALSE_FLAME_GONE,
  /** The false flame stays: how long. */
  BOARD_FALSE_FLAME_STAYS,
  /** The limit opened. */
  BOARD_LIMIT_OPEN,
  /** The limit closed. */
  BOARD_LIMIT_CLOSED,
  /** The lockout is over: how long. */
  BOARD_LOCKOUT_OVER,
  /** No call cleared the lockout: how long. */
  BOARD_LOCKOUT_CALL_CYCLED,
  /** The blower starts: its delay. */
  BOARD_BLOWER_ON,
  /** The blower stops: its delay. */
  BOARD_BLOWER_OFF,
  /** Act: the thermostat calls. */
  ACT_CALL,
  /** Act: the thermostat is satisfied. */
  ACT_CALL_ENDS,
  /** Act: power on. */
  ACT_SUPPLY_ON,
  /** Act: power off. */
  ACT_SUPPLY_OFF,
  /** Act: the air turns damp. */
  ACT_DAMP,
  /** Act: the air turns dry. */
  ACT_DRY,
  /** Act: someone tugs at the sense lead. */
  ACT_TOUCH,
  /** Act: a fault that comes and goes: trigger, change. */
  ACT_LURKS,
  /** Act: the condition of the bench is another. */
  ACT_BECOMES,
  /** A fault comes: trigger, change. */
  FAULT_COMES,
  /** A fault goes: trigger, change. */
  FAULT_GOES,
  /** A number changes: parameter, value. */
  CHANGE_TURNED,
  /** A number gets worse: parameter, what joins it. */
  CHANGE_JOINED,
  /** A part goes wrong: what. */
  CHANGE_UPSET,
  /** A part is right again: what was wrong. */
  CHANGE_RIGHTED,
  /** The flame takes another time from burner to burner: the time. */
  CHANGE_CARRIED,
  /** The flame does not pass from burner to burner. */
  CHANGE_NOT_CARRIED,
  /** The pilot flame is proved: time since its valve opened. */
  BOARD_PILOT_PROVED,
  /** The post-purge of a lockout is over. */
  BOARD_LOCKOUT_PURGED,
  /** The igniter goes off while the valve is open. */
  IGNITER_OFF,
  /** The spark goes off while the valve is open. */
  SPARK_OFF,
  /** The sense circuit is shorted: AC. */
  SIGNAL_SHORTED,
  /** The flame signal is weak: the warning. */
  SIGNAL_WEAK,
  /** The flame signal is good again. */
  SIGNAL_GOOD,
  /** A number, as a thing: parameter, value. */
  CHANGE_NUMBER,
  /** What is wrong with a part, as a thing: what. */
  CHANGE_PART,
  /** A part that is right, as a thing: what would be wrong. */
  CHANGE_PART_RIGHT,
  /** The way from burner to burner, as a thing. */
  CHANGE_CARRY_OVER,
  /** A board of a shipped name that was edited: the name. */
  SEQUENCE_EDITED,
  /** Column: the fault. */
  SYMPTOMS_FAULT,
  /** Column: how the call goes. */
  SYMPTOMS_COURSE,
  /** Column: what the light says. */
  SYMPTOMS_CODE,
  /** Column: volts at the terminal without a flame. */
  SYMPTOMS_STANDBY,
  /** Column: the same with the lead off. */
  SYMPTOMS_LEAD_OFF,
  /** Column: DC at the end of the first trial. */
  SYMPTOMS_TRIAL_DC,
  /** Column: AC there. */
  SYMPTOMS_TRIAL_AC,
  /** Column: DC after ten minutes. */
  SYMPTOMS_WARM_DC,
  /** Column: AC there. */
  SYMPTOMS_WARM_AC,
  /** Column: what looks find that is not as on the healthy bench. */
  SYMPTOMS_SIGHTS,
  /** Row: as the bench came. */
  SYMPTOMS_NO_FAULT,
  /** Under the table of symptoms. */
  SYMPTOMS_NOTE,
  /** When a meter was looked at: time, the board's stage. */
  MEASURE_WHEN,
  /** Where leads can be: points of the sense circuit, points of the supply. */
  ALLOWED_LEADS,
  /** Act: someone puts a meter on: its function. */
  ACT_HOOKS_ON,
  /** The meter stands in the opened sense lead. */
  ACT_IN_SERIES,
  /** Act: a repair was done: its name, its minutes. */
  ACT_REPAIRS,
  /** Act: something went wrong in someone's hands: its name. */
  ACT_MISHANDLES,
  /** Act: someone takes the meter off. */
  ACT_TAKES_OFF,
  /** No severity: the fault is there or it is not. */
  ALLOWED_NO_SEVERITY,
  /** Another file than that of an option: the option. */
  ALLOWED_OTHER_FILE,
  /** A file that does not exist yet: the option that replaces one. */
  ALLOWED_NEW_FILE,
  /** The first burner lights. */
  FLAME_LIGHTS,
  /** The flame has reached the rod: number of burners. */
  FLAME_ARRIVES,
  /** The flame goes out. */
  FLAME_GOES_OUT,

  /** How far a sequence is: time played, all of it. */
  SEQUENCE_PROGRESS,
  /** How many pictures are painted: done, all. */
  PICTURES_PROGRESS,
  /** Title of a sequence: the bench. */
  SEQUENCE_TITLE,
  /** Under the title: board, seed, length. */
  SEQUENCE_ABOUT,
  /** A fault that is there from the start: what. */
  SEQUENCE_FAULT,
  /** A fault that lurks from the start: trigger, change. */
  SEQUENCE_LURKS,
  /** A number that is not as it should be: parameter, value. */
  SEQUENCE_VALUE,
  /** Column and axis: time. */
  SEQUENCE_TIME,
  /** Column and lane: stage of the board. */
  SEQUENCE_STAGE,
  /** Column: the status light. */
  SEQUENCE_LIGHT,
  /** Column: what runs. */
  SEQUENCE_RUNS,
  /** Column: filtered DC, short. */
  SEQUENCE_DC,
  /** Column: what happened, and why. */
  SEQUENCE_WHAT,
  /** What the signs of the light's column mean. */
  SEQUENCE_FLASHES,
  /** Axis: DC behind the filter. */
  SEQUENCE_FILTERED,
  /** Line: pick-up: the current. */
  SEQUENCE_PICK_UP,
  /** Line: drop-out: the current. */
  SEQUENCE_DROP_OUT,
  /** Line: warning: the current. */
  SEQUENCE_WARNING,
  /** Lane: flame at the burners. */
  SEQUENCE_FLAME,
  /** Lane: acts. */
  SEQUENCE_ACTS,
  /** An act in the list under the chart: number, time, what. */
  SEQUENCE_ACT,
  /** How many acts are not listed: the count. */
  SEQUENCE_MORE,

  /** List of boards: name, description. */
  BOARD_LINE,
  /** Heading: the codes of the status light. */
  BOARD_LIGHT,

  /** List of benches: name, description. */
  BENCH_LINE,
  /** A parameter of a bench: its value, lowest, highest, all as text. */
  BENCH_RANGE,

  /** Meter: what the display shows above its largest range. */
  METER_OVER_RANGE,
  /** Meter: a figure by itself. */
  METER_FIGURE,
  /** Meter: an AC figure. */
  METER_ALTERNATING,
  /** Meter: a DC figure. */
  METER_DIRECT,
  /** Meter: an AC and a DC figure. */
  METER_BOTH,
  /** Meter: a figure that jumps. */
  METER_UNSTEADY,
  /** Meter: a figure with a tone. */
  METER_TONE,
  /** Meter: a dead display. */
  METER_NOTHING,
  /** Meter: a lead on the spark electrode. */
  METER_ON_SPARK_ELECTRODE,
  /** Meter: the spark destroyed it. */
  METER_DESTROYED,
  /** Meter: its fuse has blown just now. */
  METER_FUSE_BLOWN,
  /** Meter: ohms on a live circuit. */
  METER_OHMS_LIVE,
  /** Meter: amps across the supply. */
  METER_AMPS_ON_SUPPLY,
  /** Meter: amps across two points instead of in series. */
  METER_AMPS_ACROSS,
  /** Meter: DC volts on the supply. */
  METER_DC_WHERE_AC,
  /** Meter: AC alone in the sense lead. */
  METER_AC_WHERE_DC,
  /** Meter: milliamps for a flame current. */
  METER_TOO_COARSE,
  /** Meter: volts in series. */
  METER_VOLTS_IN_SERIES,
  /** Meter: low impedance on the sense circuit. */
  METER_LOW_IMPEDANCE,
  /** Meter: ohms with a prod through a film. */
  METER_OHMS_THROUGH_FILM,

  /** A kind of fault: its id, its name. */
  FAULT_TITLE,
  /** Its group. */
  FAULT_OF,
  /** Its severity: typical, least, most. */
  FAULT_SEVERITY,
  /** It has no severity. */
  FAULT_NO_SEVERITY,
  /** What brings it out: the trigger. */
  FAULT_SHOWS_WITH,
  /** It is there all the time. */
  FAULT_SHOWS_ALWAYS,
  /** Heading: looks and readings that show it. */
  FAULT_SEEN_BY,
  /** Heading: repairs that put it right. */
  FAULT_CURED_BY,
  /** A kind of fault: their names. */
  ALLOWED_FAULT,
  /** Something there is to do: their names. */
  ALLOWED_WORK,
  /** Nothing, unless a wire is held in the flame. */
  ALLOWED_WITH_WIRE,
  /** A fault that is not there already. */
  ALLOWED_FAULT_ONCE,
  /** What shows a fault, and when: name, proviso. */
  FAULT_SEEN_WHEN,
  /** State that work needs, and how one gets there: a sentence. */
  WORK_PREPARATION,
  /** Work on what an appliance with this ignition lacks: ignition. */
  WORK_IMPOSSIBLE,
  /** A repair that needs no parts. */
  WORK_NO_COST,
  /** Where leads go, but for a wire in the flame: points of the circuit, of the supply. */
  ALLOWED_FIXED_LEADS,
  /** A list of answers to choose from: fewest, most. */
  ALLOWED_ANSWERS,
  /** An answer with at least one claim. */
  ALLOWED_PROVED,
  /** The tag of a language: an example. */
  ALLOWED_LANGUAGE,
  /** A text that is not blank. */
  ALLOWED_FILLED_TEXT,
  /** A number in SI or with a unit: an example. */
  ALLOWED_MEASURE,
  /** A claim: its forms. */
  ALLOWED_CLAIM,
  /** A shipped demonstration or a file that exists: the names of the shipped ones. */
  ALLOWED_DEMONSTRATION,
  /** All claims of a demonstration hold. */
  DEMONSTRATION_HOLDS,
  /** A claim does not hold: step, claim. */
  DEMONSTRATION_DOUBT,
  /** A claim of the right answer does not hold: step, claim. */
  DEMONSTRATION_RIGHT_FAILS,
  /** A wrong answer comes true: step, letter of the answer. */
  DEMONSTRATION_WRONG_COMES_TRUE,
  /** Heading: looks. */
  WORK_LOOKS,
  /** Heading: readings. */
  WORK_READINGS,
  /** Heading: repairs. */
  WORK_REPAIRS,
  /** Heading: handling. */
  WORK_HANDLING,
  /** What the minutes are worth. */
  WORK_ABOUT,
  /** Minutes: all, to get there. */
  WORK_MINUTES,
  /** Where: the part. */
  WORK_PART,
  /** What is opened: a list. */
  WORK_COVERS,
  /** How many fasteners: the count. */
  WORK_FASTENERS,
  /** Tools: a list. */
  WORK_TOOLS,
  /** Power and gas off. */
  WORK_OFF_BOTH,
  /** Only power off. */
  WORK_OFF_POWER,
  /** Only gas off. */
  WORK_OFF_GAS,
  /** The burners have to burn. */
  WORK_BURNING,
  /** Neither off. */
  WORK_OFF_NONE,
  /** Hazards: a list. */
  WORK_HAZARDS,
  /** What a look can find: a list. */
  WORK_OUTCOMES,
  /** What a repair puts right: a list. */
  WORK_RIGHTS,
  /** What parts cost: units. */
  WORK_COST,
  /** Evidence that a repair destroys: a list. */
  WORK_SPOILS,
  /** What may go wrong: the mishap, its chance. */
  WORK_MISHAP,
  /** What cleaning leaves: the thickness. */
  WORK_RESIDUE,
  /** Chance of a mishap. */
  WORK_CHANCE,
  /** What a mishap does: the change. */
  WORK_DOES,
  /** The right way: minutes, sentence. */
  WORK_RIGHT_WAY,
  /** Heading: cautions. */
  WORK_CAUTIONS,

  /** Drawing: the sense terminal. */
  DRAWING_SENSE,
  /** Drawing: the common terminal. */
  DRAWING_COMMON,
  /** Drawing: the terminals of the gas valve. */
  DRAWING_VALVE,
  /** Drawing: the chassis. */
  DRAWING_CHASSIS,
  /** Drawing: the rod: its thickness. */
  DRAWING_ROD,
  /** Drawing: a rod that also sparks: its thickness. */
  DRAWING_SPARK_ROD,
  /** Drawing: the film on the rod: its thickness. */
  DRAWING_FILM,
  /** Drawing: how far the rod is off the burner's axis: the distance. */
  DRAWING_OFF_CENTER,
  /** Drawing: the way from chassis to common: its resistance. */
  DRAWING_GROUND,
  /** Drawing: the ground path is open. */
  DRAWING_GROUND_OPEN,
  /** Drawing: the lead is off the board. */
  DRAWING_LEAD_OFF,
  /** Drawing: the lead is broken. */
  DRAWING_LEAD_BROKEN,
  /** Drawing: resistance along the lead: how much. */
  DRAWING_LEAD_OHMS,
  /** Drawing: resistance of the connector: how much. */
  DRAWING_CONNECTOR_OHMS,
  /** Drawing: a leak to the chassis: its resistance. */
  DRAWING_LEAK,
  /** Drawing: rod and chassis joined: the resistance. */
  DRAWING_JUMPER,
  /** Drawing: a deposit that conducts one way: its resistance. */
  DRAWING_DEPOSIT,
  /** Drawing: the rod touches the burner. */
  DRAWING_TOUCHES,
  /** Drawing: the burner face. */
  DRAWING_BURNER,
  /** Drawing: between metal and flame at the rim: the distance. */
  DRAWING_GAP,
  /** Drawing: scale on the burner face: its resistance. */
  DRAWING_SCALE,
  /** Drawing: rod positive: crest current. */
  DRAWING_POSITIVE,
  /** Drawing: rod negative: crest current. */
  DRAWING_NEGATIVE,
  /** Drawing: the same where there is little room: crest current. */
  DRAWING_POSITIVE_BRIEF,
  /** Drawing: the same where there is little room: crest current. */
  DRAWING_NEGATIVE_BRIEF,
  /** Drawing: how the flame zone is seen, from above. */
  DRAWING_ABOVE,
  /** Drawing: how the flame zone is seen, from the side. */
  DRAWING_SIDE,
  /** Drawing: the view from the front. */
  DRAWING_FRONT,
  /** Drawing: the sense source: volts, frequency, resistance. */
  DRAWING_SOURCE,
  /** Drawing: the legend of ion density. */
  DRAWING_IONS,
  /** Drawing: gas flows through the valve. */
  DRAWING_VALVE_OPEN,
  /** Drawing: no gas flows through the valve. */
  DRAWING_VALVE_SHUT,
  /** Drawing: what streams through the burner. */
  DRAWING_GAS_AND_AIR,
  /** Drawing: a meter that is not hooked up. */
  DRAWING_METER_READY,
  /** Drawing: a hot-surface igniter. */
  DRAWING_IGNITER,
  /** Drawing: a spark electrode. */
  DRAWING_SPARK,
  /** Drawing: a wire held in the flame. */
  DRAWING_WIRE,
  /** Drawing: the line connections. */
  DRAWING_SUPPLY,
  /** Drawing: what is wrong with the flame: its state. */
  DRAWING_FLAME,
  /** Drawing in words: the board: its stage, what its light says. */
  DESCRIBED_BOARD,
  /** Drawing in words: the sense source: volts, frequency, resistance. */
  DESCRIBED_SOURCE,
  /** Drawing in words: the lead is whole. */
  DESCRIBED_LEAD,
  /** Drawing in words: the connector is open. */
  DESCRIBED_LEAD_OFF,
  /** Drawing in words: the lead is broken. */
  DESCRIBED_LEAD_BROKEN,
  /** Drawing in words: resistance of connector and lead together: how much. */
  DESCRIBED_LEAD_OHMS,
  /** Drawing in words: the rod: thickness, distance from the face, distance from the axis. */
  DESCRIBED_ROD,
  /** Drawing in words: the film on the rod: its thickness. */
  DESCRIBED_FILM,
  /** Drawing in words: the ceramic is whole. */
  DESCRIBED_INSULATOR,
  /** Drawing in words: the ceramic is cracked. */
  DESCRIBED_CRACKED,
  /** Drawing in words: a leak: its resistance. */
  DESCRIBED_LEAK,
  /** Drawing in words: a jumper: its resistance. */
  DESCRIBED_JUMPER,
  /** Drawing in words: a deposit: its resistance. */
  DESCRIBED_DEPOSIT,
  /** Drawing in words: the rod touches. */
  DESCRIBED_TOUCHES,
  /** Drawing in words: the row: count of burners, how many burn. */
  DESCRIBED_BURNERS,
  /** Drawing in words: the flame at the rod: its state, gap at the rim. */
  DESCRIBED_FLAME,
  /** Drawing in words: no flame at the rod. */
  DESCRIBED_NO_FLAME,
  /** Drawing in words: scale on the burner face: its resistance. */
  DESCRIBED_SCALE,
  /** Drawing in words: crest current with the rod positive, with the rod negative. */
  DESCRIBED_ARROWS,
  /** Drawing in words: the ground path: its resistance. */
  DESCRIBED_GROUND,
  /** Drawing in words: the ground path is open. */
  DESCRIBED_GROUND_OPEN,
  /** Drawing in words: gas flows. */
  DESCRIBED_VALVE_OPEN,
  /** Drawing in words: no gas flows. */
  DESCRIBED_VALVE_SHUT,
  /** Drawing in words: the igniter: its temperature. */
  DESCRIBED_GLOWS,
  /** Drawing in words: it sparks. */
  DESCRIBED_SPARKS,
  /** Drawing in words: it does not spark. */
  DESCRIBED_NO_SPARK,
  /** Drawing in words: what is not as it should be in service. */
  DESCRIBED_DISORDER,
  /** Drawing in words: the meter: what it shows. */
  DESCRIBED_METER,
  /** Drawing in words: a meter without a figure. */
  DESCRIBED_METER_ON,
  /** Drawing in words: no meter is hooked up. */
  DESCRIBED_METER_READY,
  /** Drawing in words: a meter in series: at which end of the lead. */
  DESCRIBED_SERIES,
  /** Drawing in words: where the red lead is, where the black one is. */
  DESCRIBED_LEADS,
  /** Drawing in words: the common terminal. */
  DESCRIBED_COMMON,
  /** Drawing in words: the sense terminal. */
  DESCRIBED_TERMINAL,

  /** What was found, or a repair and what came of it. */
  ALLOWED_LOG_ENTRY,
  /** One of several findings, or several with a bar between them: the findings. */
  ALLOWED_FINDING,
  /** A log with at least one line. */
  ALLOWED_LOG_FILLED,
  /** A thing by its name alone. */
  NAMED,
  /** Watching a heating call. */
  CHECK_CALL,
  /** Reading what the light told. */
  CHECK_LIGHT,
  /** A work at a moment: the work, the moment. */
  CHECK_AT,
  /** A DC reading: the figure. */
  OUTCOME_DIRECT,
  /** DC and AC: the figures. */
  OUTCOME_BOTH,
  /** An AC reading: the figure. */
  OUTCOME_ALTERNATING,
  /** It never came to a check. */
  OUTCOME_NOT_REACHED,
  /** Not clear which: two or more findings. */
  OUTCOME_UNSURE,
  /** One or the other. */
  OUTCOME_OR,
  /** Nothing is wrong. */
  CAUSE_HEALTHY,
  /** Two faults at once: both. */
  CAUSE_BOTH,
  /** Heading: the bench. */
  DIAGNOSIS_TITLE,
  /** What was found: the check, the outcome. */
  DIAGNOSIS_STEP,
  /** A cause that gained: the cause, its probability before and after. */
  DIAGNOSIS_RAISED,
  /** A cause that lost: the cause, its probability before and after. */
  DIAGNOSIS_LOWERED,
  /** An outcome that changes little. */
  DIAGNOSIS_NOTHING,
  /** An outcome that is hard to believe: how probable it was. */
  DIAGNOSIS_SURPRISE,
  /** Heading of the causes as they stand. */
  DIAGNOSIS_NOW,
  /** Heading of the causes as they were at first. */
  DIAGNOSIS_FIRST,
  /** Heading of what to check. */
  DIAGNOSIS_CHECKS,
  /** Heading of the order of repairs. */
  DIAGNOSIS_REPAIRS,
  /** Advice to check: the check, bits, minutes, minutes saved. */
  DIAGNOSIS_NEXT_CHECK,
  /** Advice to repair: the repair, how probable a cure is. */
  DIAGNOSIS_NEXT_REPAIR,
  /** What a repair spoils: bits. */
  DIAGNOSIS_SPOILS,
  /** Nothing is left to repair: how probable. */
  DIAGNOSIS_DONE,
  /** Heading of a column. */
  DIAGNOSIS_HEADING_CHECK,
  /** Heading of a column. */
  DIAGNOSIS_HEADING_NAME,
  /** Heading of a column. */
  DIAGNOSIS_HEADING_BITS,
  /** Heading of a column. */
  DIAGNOSIS_HEADING_MINUTES,
  /** Heading of a column. */
  DIAGNOSIS_HEADING_MERIT,
  /** Heading of a column. */
  DIAGNOSIS_HEADING_WORTH,
  /** Heading of a column. */
  DIAGNOSIS_HEADING_REPAIR,
  /** Heading of a column. */
  DIAGNOSIS_HEADING_CURES,
  /** Heading of the sentence for the customer. */
  DIAGNOSIS_CUSTOMER,
  /** Before it is clear: two causes, the check, minutes. */
  CUSTOMER_ASK,
  CUSTOMER_CHECK,
  /** When it is clear enough: the cause, the repair, minutes. */
  CUSTOMER_REPAIR,
  /** When nothing is wrong. */
  CUSTOMER_DONE,
  /** Somebody tried something and did not come to its end. */
  VERB_ATTEMPTED,
  /** Somebody came to the end of something. */
  VERB_COMPLETED,
  /** Somebody passed. */
  VERB_PASSED,
  /** Somebody did not pass. */
  VERB_FAILED,
  /** Before what a customer says: that. */
  ITEM_CUSTOMER,
  /** What is asked under a table of readings. */
  ITEM_QUESTION,
  /** Head of the column of what was looked at. */
  ITEM_TEST,
  /** Head of the column of what was found. */
  ITEM_FOUND,
  /** After a right answer: the cause. */
  ITEM_RIGHT,
  /** After a wrong answer: the cause. */
  ITEM_WRONG,
  /** What tells a cause from the others: check, what it found. */
  ITEM_TOLD_BY,
  /** Where a cause sits and what puts it right: place, repair. */
  ITEM_PLACE,
  /** Note below a diagnosis. */
  DIAGNOSIS_NOTE,
  /** What is allowed, and what was probably meant: what, the value. */
  ALLOWED_DID_YOU_MEAN,
  /** A reading as it is typed: an example. */
  ALLOWED_READING,
  /** An entry of a log as it is typed: examples. */
  ALLOWED_LOGGED,
  /** A time of a log as it is typed: examples. */
  ALLOWED_WHEN,
  /** A time that is not before another one: that one. */
  ALLOWED_LATER,
  /** Dates or hours in one log, not both. */
  ALLOWED_ONE_CLOCK,
  /** A reading or a repair in one entry. */
  ALLOWED_READ_OR_DONE,
  /** A range of a rate: an example. */
  ALLOWED_RATE,
  /** Nothing beside another option: which. */
  ALLOWED_WITHOUT,
  /** A reading: its kind. */
  MATCH_SIGHT,
  /** A reading after cleaning: the reading. */
  MATCH_CLEANED,
  /** A reading with the rod moved sideways: the reading, how far. */
  MATCH_ACROSS,
  /** A reading with the rod moved up: the reading, how far. */
  MATCH_UP,
  /** A reading with the rod moved along: the reading, how far. */
  MATCH_ALONG,
  /** An interval: from, to. */
  MATCH_INTERVAL,
  /** Two things in a list: the one, the other. */
  MATCH_AND,
  /** The readings do not show an unknown: which. */
  MATCH_UNSEEN,
  /** The readings cannot tell unknowns apart: a list. */
  MATCH_AMBIGUOUS,
  /** The best value of an unknown lies outside its own interval: which. */
  MATCH_TOGETHER,
  /** A reading that would help: which, its expected value, width that is left. */
  MATCH_FURTHER,
  /** No reading would help. */
  MATCH_NOTHING_FURTHER,
  /** The readings do not belong together: the furthest off, read, fitted. */
  MATCH_IMPLAUSIBLE,
  /** What the intervals are worth. */
  MATCH_INTERVALS,
  /** A reading cannot have been taken there: which, what is allowed. */
  MATCH_IMPOSSIBLE,
  /** A circuit of a fit was not solved: for which reading, why. */
  MATCH_UNSOLVED,
  /** A fit came to no end: how many sets of values were tried. */
  MATCH_UNSETTLED,
  /** No match: command, why. */
  MATCH_FAILED,
  /** No forecast: command, why. */
  FORECAST_FAILED,
  /** Plan: nothing is done. */
  FORECAST_NOTHING,
  /** The reading now: middle, low, high. */
  FORECAST_NOW,
  /** When to serve: limit, chance, time. */
  FORECAST_SERVICE,
  /** Service is due: limit, chance. */
  FORECAST_DUE,
  /** No service in the time looked at: limit, chance, its end. */
  FORECAST_LASTS,
  /** A time: hours of flame. */
  FORECAST_HOURS,
  /** A time: hours of flame, its date. */
  FORECAST_DAY,
  /** The log is no ageing alone. */
  FORECAST_IMPLAUSIBLE,
  /** Few lives explain the log: how many. */
  FORECAST_ROUGH,
  /** What the band is worth. */
  FORECAST_BAND,
  /** Two things of a list: the first ones, one more. */
  LISTED,
  /** Move. */
  MOVE_POWER_ON,
  /** Move. */
  MOVE_POWER_OFF,
  /** Move. */
  MOVE_GAS_ON,
  /** Move. */
  MOVE_GAS_OFF,
  /** Move. */
  MOVE_SIGNAL_ON,
  /** Move. */
  MOVE_SIGNAL_OFF,
  /** Move: groups of faults. */
  MOVE_SUSPECTS,
  /** Move: grade. */
  MOVE_HINT,
  /** Move: the text. */
  MOVE_NOTE,
  /** Remark: number, move, why. */
  GRADE_IMPOSSIBLE,
  /** Remark: number, move, what the sheet says, what the furnace shows. */
  GRADE_FOUND_DIFFERS,
  /** Remark: number, minute of the sheet, minute of the replay. */
  GRADE_MINUTE_DIFFERS,
  /** Remark: how many more. */
  GRADE_MORE,
  /** Mark. */
  GRADE_NOT_DONE,
  /** Mark. */
  GRADE_SAFE,
  /** Mark: move, caution. */
  GRADE_DANGER,
  /** Mark. */
  GRADE_SIGNAL_LEFT,
  /** Mark. */
  GRADE_PLAIN,
  /** Mark. */
  GRADE_NO_TESTS,
  /** Mark: sentence, grade. */
  GRADE_HINTED,
  /** Mark: move. */
  GRADE_BEST,
  /** Mark: move, share, best check. */
  GRADE_STEP,
  /** Mark: move. */
  GRADE_REDUNDANT,
  /** Mark: move, best check. */
  GRADE_REDUNDANT_BETTER,
  /** Mark: move. */
  GRADE_IRRELEVANT,
  /** Mark: move, best check. */
  GRADE_IRRELEVANT_BETTER,
  /** Mark: move, check. */
  GRADE_ON_SUSPICION,
  /** Mark: move, check. */
  GRADE_EVIDENCE,
  /** Mark: minute, share. */
  GRADE_SUSPECTS,
  /** Mark: minute, groups. */
  GRADE_RULED_OUT,
  /** Mark. */
  GRADE_NO_SUSPECTS,
  /** Mark. */
  GRADE_TIME_UP,
  /** Mark. */
  GRADE_NO_CONCLUSION,
  /** Mark: cause. */
  GRADE_CAUSE_RIGHT,
  /** Mark: cause. */
  GRADE_CAUSE_WRONG,
  /** Mark: part. */
  GRADE_PLACE_WRONG,
  /** Mark. */
  GRADE_WHOLE,
  /** Mark. */
  GRADE_LEFT_ALONE,
  /** Mark. */
  GRADE_LEFT_OFF,
  /** Mark: cause. */
  GRADE_NOT_WHOLE,
  /** Mark. */
  GRADE_NO_CALL,
  /** Mark. */
  GRADE_NO_READING,
  /** Mark. */
  GRADE_NO_WASTE,
  /** Mark. */
  GRADE_ALL_FOR_NOTHING,
  /** Mark: minutes. */
  GRADE_TIME_WASTED,
  /** Mark: repair. */
  GRADE_PART_WASTED,
  /** Remark: engine of the sheet, of the grader. */
  GRADE_OTHER_ENGINE,
  /** Remark: name of the quiz on the sheet. */
  GRADE_OTHER_QUIZ,
  /** Remark: name. */
  GRADE_NO_SUCH_CALL,
  /** Remark: minutes, limit. */
  GRADE_OVER_TIME,
  /** Remark: minute of the last move before the program was closed, minute it was opened again. */
  GRADE_RESTARTED,
  /** The same where nobody knows how long it was closed. */
  GRADE_RESTARTED_UNKNOWN,
  /** At most two faults of different kinds. */
  ALLOWED_HIDDEN,
  /** A sealed text as it was handed out. */
  ALLOWED_SEALED,
  /** A move in words. */
  ALLOWED_MOVE,
  /** Something to expect. */
  EXPECT_GOOD_CURRENT,
  /** Something to expect. */
  EXPECT_WEAK_CURRENT,
  /** Something to expect. */
  EXPECT_NO_CURRENT,
  /** Something to expect. */
  EXPECT_FULL_VOLTS,
  /** Something to expect. */
  EXPECT_LOW_VOLTS,
  /** Something to expect. */
  EXPECT_NO_VOLTS,
  /** Why. */
  COACH_PREPARES,
  /** Why. */
  COACH_LISTS,
  /** Why: cause, repair. */
  COACH_REPAIRS,
  /** Why. */
  COACH_CONCLUDES,
  /** Why. */
  COACH_PROVES,
  /** Why. */
  COACH_DESCRIBES,
  /** Why: groups, bits, minutes. */
  COACH_TESTS,
  /** Hint: phase, groups. */
  HINT_DIRECTION,
  /** Hint. */
  HINT_FURNACE,
  /** Hint: part. */
  HINT_PLACE,
  /** Hint: move, why. */
  HINT_MOVE,
  /** One sheet of each learner: the other file. */
  ALLOWED_ONE_SHEET,
  /** An instructor's file. */
  ALLOWED_UNSEALED,
  /** As many calls as the bank has: their number. */
  ALLOWED_IN_BANK,
  /** A row of a blueprint. */
  ALLOWED_ROW,
  /** What cannot be done now: why. */
  ALLOWED_NOW,
  /** Calls that cannot be set: file, names. */
  QUIZ_UNSOUND,
  /** A call is concluded: its name. */
  QUIZ_CONCLUDED,
  /** All is handed in: name of the quiz. */
  QUIZ_ALL_DONE,
  /** A sheet of a quiz that was ended: its file. */
  QUIZ_SHEET_ENDED,
  /** A call was handed in: its name. */
  QUIZ_HANDED_IN,
  /** A sheet that cannot be: call, move. */
  QUIZ_SHEET_IMPOSSIBLE,
  /** A call: title, complaint, minutes, budget, cost, budget. */
  QUIZ_CALL,
  /** A move that found something: minute, move, what. */
  QUIZ_FOUND,
  /** A move: minute, move. */
  QUIZ_DID,
  /** A dangerous move: minute, move, caution. */
  QUIZ_STOPPED,
  /** Marks of a sheet: learner, per cent. */
  QUIZ_PASSED,
  /** Marks of a sheet: learner, per cent. */
  QUIZ_FAILED,
  /** Marks of a call: name, total, process, result, per cent. */
  QUIZ_CALL_MARKS,
  /** A mark changed: learner, call, before, now, per cent. */
  QUIZ_CHANGED,
  /** No mark changed. */
  QUIZ_UNCHANGED,
  /** An absolute address. */
  ALLOWED_ADDRESS,
  /** A step of a routine. */
  ALLOWED_STEP
}
