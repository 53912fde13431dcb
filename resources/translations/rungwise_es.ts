<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en_GB">
<context>
    <name>AbsenceBlock</name>
    <message>
        <source>A session of these days is on record; it counts as ever.</source>
        <translation>Hay una sesión registrada en estos días; cuenta como siempre.</translation>
    </message>
    <message>
        <source>Back since today</source>
        <translation>De vuelta desde hoy</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Days away</source>
        <translation>Días de ausencia</translation>
    </message>
    <message>
        <source>None on record. Note an illness or a journey, and the gap explains itself.</source>
        <translation>Ninguno registrado. Anotar una enfermedad o un viaje, y la pausa se explica sola.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove: {absence}</source>
        <translation>Quitar: {absence}</translation>
    </message>
    <message>
        <source>{count} sessions of these days are on record; they count as ever.</source>
        <translation>Hay {count} sesiones registradas en estos días; cuentan como siempre.</translation>
    </message>
    <message>
        <source>{name}: {absence}</source>
        <translation>{name}: {absence}</translation>
    </message>
</context>
<context>
    <name>AbsenceForm</name>
    <message>
        <source>Change these days</source>
        <translation>Cambiar estos días</translation>
    </message>
    <message>
        <source>First day away</source>
        <translation>Primer día de ausencia</translation>
    </message>
    <message>
        <source>Last day away; empty: it goes on</source>
        <translation>Último día de ausencia; vacío: continúa</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Needed: the first day, such as {example}.</source>
        <translation>Falta: el primer día, como {example}.</translation>
    </message>
    <message>
        <source>Note on the days away</source>
        <translation>Nota sobre los días de ausencia</translation>
    </message>
    <message>
        <source>Note these days</source>
        <translation>Anotar estos días</translation>
    </message>
    <message>
        <source>On record already: {absence}. Put that one right, or take other days.</source>
        <translation>Ya registrado: {absence}. Corregirlo, o tomar otros días.</translation>
    </message>
    <message>
        <source>The last day is {first} at the earliest; leave it empty if it goes on.</source>
        <translation>El último día es, como pronto, el {first}; dejarlo vacío si continúa.</translation>
    </message>
    <message>
        <source>Why away</source>
        <translation>Motivo de la ausencia</translation>
    </message>
    <message>
        <source>first day</source>
        <translation>primer día</translation>
    </message>
    <message>
        <source>last day (empty: goes on)</source>
        <translation>último día (vacío: continúa)</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>why</source>
        <translation>motivo</translation>
    </message>
</context>
<context>
    <name>Absences</name>
    <message>
        <source>Days away, ill or injured count as days without training; only days of a deload do not. From {repeat} days without an exercise on, the last is asked again; from {lighter} on less, from {easier} on clearly less, from {restart} on a new start is needed. No session is expected on these days.</source>
        <translation>Los días de ausencia, enfermedad o lesión cuentan como días sin entrenar; solo los de descarga no. Desde {repeat} días sin un ejercicio se pide otra vez lo último; desde {lighter}, menos; desde {easier}, bastante menos; desde {restart} hace falta un inicio nuevo. No se espera ninguna sesión en estos días.</translation>
    </message>
    <message>
        <source>Next session: {day}.</source>
        <translation>Próxima sesión: {day}.</translation>
    </message>
    <message>
        <source>No gap changes what is asked.</source>
        <translation>Ninguna pausa cambia lo que se pide.</translation>
    </message>
    <message>
        <source>No session is planned ahead.</source>
        <translation>No hay ninguna sesión planeada.</translation>
    </message>
    <message>
        <source>Nothing is expected until the return; back today, the next session is {day}.</source>
        <translation>No se espera nada hasta la vuelta; con vuelta hoy, la próxima sesión es el {day}.</translation>
    </message>
    <message>
        <source>{kind} from {first} on</source>
        <translation>{kind} desde el {first}</translation>
    </message>
    <message>
        <source>{kind} since {first}</source>
        <translation>{kind} desde el {first}</translation>
    </message>
</context>
<context>
    <name>Activities</name>
    <message>
        <source>Day of the activity</source>
        <translation>Día de la actividad</translation>
    </message>
    <message>
        <source>Effort of the activity, 0 to 10</source>
        <translation>Esfuerzo de la actividad, 0 a 10</translation>
    </message>
    <message>
        <source>Minutes of the activity</source>
        <translation>Minutos de la actividad</translation>
    </message>
    <message>
        <source>Name of the activity</source>
        <translation>Nombre de la actividad</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
</context>
<context>
    <name>ActivityRows</name>
    <message>
        <source>Another activity</source>
        <translation>Otra actividad</translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation>Quitar {name}</translation>
    </message>
    <message>
        <source>activity</source>
        <translation>actividad</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>effort</source>
        <translation>esfuerzo</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
</context>
<context>
    <name>Ahead</name>
    <message>
        <source>If all goes as asked</source>
        <translation>Si todo va como se pide</translation>
    </message>
    <message>
        <source>If one in four is missed</source>
        <translation>Si 1 de 4 no se alcanza</translation>
    </message>
</context>
<context>
    <name>Application</name>
    <message>
        <source>Backed up to {path}</source>
        <translation>Copia de seguridad guardada en {path}</translation>
    </message>
    <message>
        <source>Choose a file that holds everything</source>
        <translation>Elegir un archivo que lo contiene todo</translation>
    </message>
    <message>
        <source>Choose a trainee first.</source>
        <translation>Elegir antes un atleta.</translation>
    </message>
    <message>
        <source>Data files (*.db)</source>
        <translation>Archivos de datos (*.db)</translation>
    </message>
    <message>
        <source>Erased from the data file and {count} copies</source>
        <translation>Borrado del archivo de datos y de {count} copias</translation>
    </message>
    <message>
        <source>Erased from the data file and {count} copies; the name still stands in texts of others</source>
        <translation>Borrado del archivo de datos y de {count} copias; el nombre aún figura en textos de otros atletas</translation>
    </message>
    <message>
        <source>Everything is taken over; what was there is in {name}</source>
        <translation>Todo está traspasado; lo que había está en {name}</translation>
    </message>
    <message>
        <source>Left as they were, without it: {names}</source>
        <translation>Quedan como estaban, sin ella: {names}</translation>
    </message>
    <message>
        <source>Open a data file</source>
        <translation>Abrir un archivo de datos</translation>
    </message>
    <message>
        <source>Reading everything in {name}…</source>
        <translation>Leyendo todo en {name}…</translation>
    </message>
    <message>
        <source>Something went wrong that should not have.</source>
        <translation>Ha pasado algo que no debía pasar.</translation>
    </message>
    <message>
        <source>The data file and its backups have a passphrase</source>
        <translation>El archivo de datos y sus copias de seguridad tienen contraseña</translation>
    </message>
    <message>
        <source>The data file and its backups have no passphrase</source>
        <translation>El archivo de datos y sus copias de seguridad no tienen contraseña</translation>
    </message>
    <message>
        <source>The data file is damaged: take the newest backup from {folder}.</source>
        <translation>El archivo de datos está dañado: tomar la copia de seguridad más reciente de {folder}.</translation>
    </message>
    <message>
        <source>The data file {name} is damaged.</source>
        <translation>El archivo de datos {name} está dañado.</translation>
    </message>
    <message>
        <source>These copies still hold everything: {names}</source>
        <translation>Estas copias aún lo contienen todo: {names}</translation>
    </message>
    <message>
        <source>Went back to the backup; what was there is in {name}</source>
        <translation>Se volvió a la copia de seguridad; lo que había está en {name}</translation>
    </message>
    <message>
        <source>What was saved is safe. The text below helps to mend it; it holds places in the program, and no names or health data.</source>
        <translation>Lo guardado está a salvo. El texto de abajo ayuda a repararlo; contiene lugares del programa, sin nombres ni datos de salud.</translation>
    </message>
    <message>
        <source>{name} is locked by a passphrase.</source>
        <translation>{name} está bloqueado con contraseña.</translation>
    </message>
</context>
<context>
    <name>AssignPanel</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Primer día</translation>
    </message>
    <message>
        <source>Give</source>
        <translation>Asignar</translation>
    </message>
    <message>
        <source>Give it to {name}</source>
        <translation>Asignar a {name}</translation>
    </message>
    <message>
        <source>Say when it starts.</source>
        <translation>Decir cuándo empieza.</translation>
    </message>
    <message>
        <source>The program has {count} days a week: choose as many weekdays.</source>
        <translation>El programa tiene {count} días por semana: elegir esos mismos días de la semana.</translation>
    </message>
</context>
<context>
    <name>Balance</name>
    <message>
        <source>Add {exercise} on {day}</source>
        <translation>Añadir {exercise} ({day})</translation>
    </message>
    <message>
        <source>Do {first} and {second} in turn: {saves} min less</source>
        <translation>Alternar {first} y {second}: {saves} min menos</translation>
    </message>
    <message>
        <source>Leave the {variable} as they were</source>
        <translation>Dejar como estaba: {variable}</translation>
    </message>
    <message>
        <source>Move {day} to {weekday}</source>
        <translation>Pasar {day} al {weekday}</translation>
    </message>
    <message>
        <source>No {pattern} in the week</source>
        <translation>Sin {pattern} en la semana</translation>
    </message>
    <message>
        <source>Take {exercise} off: {saves} min less</source>
        <translation>Quitar {exercise}: {saves} min menos</translation>
    </message>
    <message>
        <source>days a week</source>
        <translation>días por semana</translation>
    </message>
    <message>
        <source>lower body</source>
        <translation>tren inferior</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>tracción</translation>
    </message>
    <message>
        <source>push</source>
        <translation>empuje</translation>
    </message>
    <message>
        <source>upper body</source>
        <translation>tren superior</translation>
    </message>
    <message>
        <source>{day} takes {minutes} min, {allowed} are there</source>
        <translation>{day} lleva {minutes} min y hay {allowed}</translation>
    </message>
    <message>
        <source>{exercise}: {variables} grow at once in this phase</source>
        <translation>{exercise}: {variables} crecen a la vez en esta fase</translation>
    </message>
    <message>
        <source>{one} and {other} even, {count} sets each</source>
        <translation>{one} y {other} igualados, {count} series por lado</translation>
    </message>
    <message>
        <source>{one} {first} against {other} {second}</source>
        <translation>{one} {first} frente a {other} {second}</translation>
    </message>
    <message>
        <source>{pattern} on {first} and {second}, no full day between</source>
        <translation>{pattern} el {first} y el {second}, sin un día entero en medio</translation>
    </message>
    <message>
        <source>{pattern} twice on {first}</source>
        <translation>{pattern} dos veces el {first}</translation>
    </message>
    <message>
        <source>{push} sets pushed against {pull} pulled</source>
        <translation>{push} series de empuje frente a {pull} de tracción</translation>
    </message>
</context>
<context>
    <name>BalanceBlock</name>
    <message>
        <source>Balance</source>
        <translation>Equilibrio</translation>
    </message>
    <message>
        <source>Hard sets a week, by muscle</source>
        <translation>Series duras por semana y músculo</translation>
    </message>
    <message>
        <source>Nothing is missing, nothing piles up.</source>
        <translation>No falta nada, no se acumula nada.</translation>
    </message>
    <message>
        <source>Nothing planned yet</source>
        <translation>Nada planeado aún</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation>y {count} más</translation>
    </message>
    <message>
        <source>dotted: published marks at {marks}</source>
        <translation>punteado: referencias publicadas en {marks}</translation>
    </message>
</context>
<context>
    <name>BannerActs</name>
    <message>
        <source>Set a caution aside</source>
        <translation>Apartar un aviso</translation>
    </message>
</context>
<context>
    <name>CautionBanner</name>
    <message>
        <source>Next ({place} of {count})</source>
        <translation>Siguiente ({place} de {count})</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Show the next caution</source>
        <translation>Mostrar el aviso siguiente</translation>
    </message>
    <message>
        <source>Source: {source}</source>
        <translation>Fuente: {source}</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
</context>
<context>
    <name>CautionPart</name>
    <message>
        <source>Cleared by {name}</source>
        <translation>Autorización de {name}</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation>No hay nada pendiente.</translation>
    </message>
    <message>
        <source>Nothing speaks against asking more.</source>
        <translation>Nada impide pedir más.</translation>
    </message>
    <message>
        <source>Nothing was set aside. A caution that you set aside is kept here with your reason; it comes back when what it rests on changes.</source>
        <translation>No se ha apartado nada. Aquí queda cada aviso que se aparta, con su motivo; vuelve cuando cambia aquello en lo que se apoya.</translation>
    </message>
    <message>
        <source>One caution is open.</source>
        <translation>Hay un aviso pendiente.</translation>
    </message>
    <message>
        <source>Record the clearance of {name}</source>
        <translation>Registrar la autorización de {name}</translation>
    </message>
    <message>
        <source>Set a caution aside</source>
        <translation>Apartar un aviso</translation>
    </message>
    <message>
        <source>Set aside and cleared</source>
        <translation>Apartado y autorizado</translation>
    </message>
    <message>
        <source>Something stops the training; it is cleared, never set aside.</source>
        <translation>Algo detiene el entrenamiento: se autoriza, nunca se aparta.</translation>
    </message>
    <message>
        <source>Take a caution up again</source>
        <translation>Retomar un aviso</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Retomarlo</translation>
    </message>
    <message>
        <source>Take up again: {text}</source>
        <translation>Retomar: {text}</translation>
    </message>
    <message>
        <source>is open again</source>
        <translation>vuelve a estar pendiente</translation>
    </message>
    <message>
        <source>no longer so</source>
        <translation>ya no es así</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>sin motivo anotado</translation>
    </message>
    <message>
        <source>stays aside</source>
        <translation>sigue apartado</translation>
    </message>
    <message>
        <source>{count} cautions are open.</source>
        <translation>Hay {count} avisos pendientes.</translation>
    </message>
    <message>
        <source>{what} ({who})</source>
        <translation>{what} ({who})</translation>
    </message>
</context>
<context>
    <name>CautionRow</name>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Source: {source}</source>
        <translation>Fuente: {source}</translation>
    </message>
</context>
<context>
    <name>CautionWaysRow</name>
    <message>
        <source>Session of {day}</source>
        <translation>Sesión del {day}</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>65 or older</source>
        <translation>65 años o más</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Aviso</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>aches were noted</source>
        <translation>se anotaron dolencias</translation>
    </message>
    <message>
        <source>clearance needed</source>
        <translation>falta autorización</translation>
    </message>
    <message>
        <source>days much alike</source>
        <translation>días muy parecidos</translation>
    </message>
    <message>
        <source>deload advised</source>
        <translation>conviene descargar</translation>
    </message>
    <message>
        <source>effort rises at the same work ({effort_before} to {effort_now})</source>
        <translation>sube el esfuerzo con el mismo trabajo ({effort_before} a {effort_now})</translation>
    </message>
    <message>
        <source>few sessions a week</source>
        <translation>pocas sesiones por semana</translation>
    </message>
    <message>
        <source>large step</source>
        <translation>paso grande</translation>
    </message>
    <message>
        <source>much grew at once</source>
        <translation>creció mucho a la vez</translation>
    </message>
    <message>
        <source>next step too large</source>
        <translation>paso siguiente demasiado grande</translation>
    </message>
    <message>
        <source>no deload for long</source>
        <translation>mucho tiempo sin descarga</translation>
    </message>
    <message>
        <source>no rest day between</source>
        <translation>sin día de descanso en medio</translation>
    </message>
    <message>
        <source>not screened yet</source>
        <translation>sin cuestionario de salud</translation>
    </message>
    <message>
        <source>pain noted</source>
        <translation>dolor anotado</translation>
    </message>
    <message>
        <source>pain: decide</source>
        <translation>dolor: decidir</translation>
    </message>
    <message>
        <source>perhaps under 18</source>
        <translation>quizá menor de 18</translation>
    </message>
    <message>
        <source>plateau likely</source>
        <translation>estancamiento probable</translation>
    </message>
    <message>
        <source>red flag: clearance</source>
        <translation>señal de alarma: autorizar</translation>
    </message>
    <message>
        <source>reps in reserve fall at the same work ({rir_before} to {rir_now})</source>
        <translation>bajan las repeticiones en reserva con el mismo trabajo ({rir_before} a {rir_now})</translation>
    </message>
    <message>
        <source>rule complete</source>
        <translation>regla completa</translation>
    </message>
    <message>
        <source>training load incomplete</source>
        <translation>carga de entrenamiento incompleta</translation>
    </message>
    <message>
        <source>wellness is down ({wellness_before} to {wellness_now})</source>
        <translation>baja el bienestar ({wellness_before} a {wellness_now})</translation>
    </message>
    <message>
        <source>{days} since last</source>
        <translation>{days} desde la última</translation>
    </message>
    <message>
        <source>{lines} exercises stand still</source>
        <translation>{lines} ejercicios no avanzan</translation>
    </message>
</context>
<context>
    <name>CautionsSeen</name>
    <message>
        <source>All {count}</source>
        <translation>Los {count}</translation>
    </message>
    <message>
        <source>Nothing was seen.</source>
        <translation>No se vio nada.</translation>
    </message>
    <message>
        <source>Reading the days trained…</source>
        <translation>Leyendo los días entrenados…</translation>
    </message>
    <message>
        <source>Seen in the last {weeks}</source>
        <translation>Visto en las últimas {weeks}</translation>
    </message>
    <message>
        <source>since {day}</source>
        <translation>desde el {day}</translation>
    </message>
</context>
<context>
    <name>Changes</name>
    <message>
        <source>No trend tells the maximum of {name}: the load is as typed.</source>
        <translation>Ninguna tendencia da el máximo de {name}: la carga queda como se escribió.</translation>
    </message>
    <message>
        <source>from {day}: moves by {rule}</source>
        <translation>desde {day}: sigue la regla {rule}</translation>
    </message>
    <message>
        <source>from {day}: starts at {work}</source>
        <translation>desde {day}: empieza con {work}</translation>
    </message>
    <message>
        <source>from {day}: starts at {work}, by assessment</source>
        <translation>desde {day}: empieza con {work}, por evaluación</translation>
    </message>
    <message>
        <source>from {day}: starts at {work}, from the record</source>
        <translation>desde {day}: empieza con {work}, por el registro</translation>
    </message>
    <message>
        <source>from {day}: {work}</source>
        <translation>desde {day}: {work}</translation>
    </message>
    <message>
        <source>{name} would start at {load} today: {percent} % of about {maximum} (± {off}).</source>
        <translation>{name} empezaría hoy con {load}: {percent} % de unos {maximum} (± {off}).</translation>
    </message>
</context>
<context>
    <name>ChangesList</name>
    <message>
        <source>Change the rule for {name} only</source>
        <translation>Cambiar la regla solo para {name}</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>{name}, {change}</source>
        <translation>{name}, {change}</translation>
    </message>
</context>
<context>
    <name>ChartBlock</name>
    <message>
        <source>Hard sets a week</source>
        <translation>Series duras por semana</translation>
    </message>
    <message>
        <source>Left and Right go from session to session, + and − show less and more.</source>
        <translation>Izquierda y derecha van de sesión en sesión, + y − muestran menos y más.</translation>
    </message>
    <message>
        <source>Open session</source>
        <translation>Abrir sesión</translation>
    </message>
    <message>
        <source>done over planned</source>
        <translation>hechas sobre planeadas</translation>
    </message>
</context>
<context>
    <name>ChartSaving</name>
    <message>
        <source>Not saved: {why}</source>
        <translation>No se guardó: {why}</translation>
    </message>
    <message>
        <source>Save as drawing (SVG)…</source>
        <translation>Guardar como dibujo (SVG)…</translation>
    </message>
    <message>
        <source>Save as picture (PNG)…</source>
        <translation>Guardar como imagen (PNG)…</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Guardar el gráfico</translation>
    </message>
    <message>
        <source>Save the numbers (CSV)…</source>
        <translation>Guardar los números (CSV)…</translation>
    </message>
    <message>
        <source>Save the numbers (spreadsheet)…</source>
        <translation>Guardar los números (hoja de cálculo)…</translation>
    </message>
    <message>
        <source>Saved to {path}</source>
        <translation>Guardado en {path}</translation>
    </message>
</context>
<context>
    <name>Chooser</name>
    <message>
        <source>Leave</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Nothing is called like that: try other letters</source>
        <translation>Nada se llama así: probar con otras letras</translation>
    </message>
    <message>
        <source>Return takes it, Esc leaves</source>
        <translation>Intro acepta, Esc cierra</translation>
    </message>
</context>
<context>
    <name>ClearanceForm</name>
    <message>
        <source>Day of the clearance</source>
        <translation>Día de la autorización</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Licensed professional who cleared the trainee</source>
        <translation>Profesional de la salud que autorizó</translation>
    </message>
    <message>
        <source>Needed: the day, today or before.</source>
        <translation>Falta: el día, hoy o antes.</translation>
    </message>
    <message>
        <source>Needed: the name of the licensed professional.</source>
        <translation>Falta: el nombre del profesional de la salud.</translation>
    </message>
    <message>
        <source>Record only what a licensed professional said; local rules come first.</source>
        <translation>Registrar solo lo que dijo un profesional de la salud habilitado; las normas locales van primero.</translation>
    </message>
    <message>
        <source>Record the clearance</source>
        <translation>Registrar la autorización</translation>
    </message>
    <message>
        <source>What was said</source>
        <translation>Qué dijo</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>licensed professional</source>
        <translation>profesional de la salud</translation>
    </message>
    <message>
        <source>what was said</source>
        <translation>qué dijo</translation>
    </message>
</context>
<context>
    <name>Clipboard</name>
    <message>
        <source>1 slot</source>
        <translation>1 puesto</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>un día</translation>
    </message>
    <message>
        <source>a phase</source>
        <translation>una fase</translation>
    </message>
    <message>
        <source>{count} slots</source>
        <translation>{count} puestos</translation>
    </message>
</context>
<context>
    <name>ColumnHeader</name>
    <message>
        <source>What {column} holds</source>
        <translation>Qué contiene {column}</translation>
    </message>
</context>
<context>
    <name>Comparing</name>
    <message>
        <source>Compare {name} with</source>
        <translation>Comparar {name} con</translation>
    </message>
    <message>
        <source>Compare…</source>
        <translation>Comparar…</translation>
    </message>
    <message>
        <source>Nothing any more</source>
        <translation>Dejar de comparar</translation>
    </message>
    <message>
        <source>a line, a trainee, an earlier time</source>
        <translation>una línea, un atleta, un tiempo anterior</translation>
    </message>
</context>
<context>
    <name>Dates</name>
    <message>
        <source>Not a date: write it like {example} or {iso}.</source>
        <translation>No es una fecha: escribirla como {example} o {iso}.</translation>
    </message>
</context>
<context>
    <name>DayBlock</name>
    <message>
        <source>Add an exercise to this day</source>
        <translation>Añadir un ejercicio a este día</translation>
    </message>
    <message>
        <source>Add an exercise: part of its name, and 3 × 8-12 60 if you like</source>
        <translation>Añadir un ejercicio: parte de su nombre y, si se quiere, 3 × 8-12 60</translation>
    </message>
    <message>
        <source>Type part of an exercise&apos;s name, like squ 3 × 8-12 60: Return adds it</source>
        <translation>Escribir parte del nombre de un ejercicio, como sent 3 × 8-12 60: Intro lo añade</translation>
    </message>
</context>
<context>
    <name>DayHead</name>
    <message>
        <source>1 slot</source>
        <translation>1 puesto</translation>
    </message>
    <message>
        <source>Return edits the day, Alt with the arrows moves it, Delete removes it.</source>
        <translation>Intro edita el día, Alt con las flechas lo mueve, Supr lo quita.</translation>
    </message>
    <message>
        <source>eight</source>
        <translation>ocho</translation>
    </message>
    <message>
        <source>four</source>
        <translation>cuatro</translation>
    </message>
    <message>
        <source>nothing planned yet</source>
        <translation>nada planeado aún</translation>
    </message>
    <message>
        <source>six</source>
        <translation>seis</translation>
    </message>
    <message>
        <source>the next {count} sessions, if all goes as asked</source>
        <translation>las próximas {count} sesiones, si todo va como se pide</translation>
    </message>
    <message>
        <source>the next {count}, if all goes well</source>
        <translation>las próximas {count}, si todo va bien</translation>
    </message>
    <message>
        <source>three</source>
        <translation>tres</translation>
    </message>
    <message>
        <source>two</source>
        <translation>dos</translation>
    </message>
    <message>
        <source>{count} slots</source>
        <translation>{count} puestos</translation>
    </message>
    <message>
        <source>{detail} · in turn</source>
        <translation>{detail} · alternado</translation>
    </message>
    <message>
        <source>{slots} · about {time}</source>
        <translation>{slots} · unos {time}</translation>
    </message>
</context>
<context>
    <name>DayLoads</name>
    <message>
        <source>Load by day. {days}</source>
        <translation>Carga por día. {days}</translation>
    </message>
    <message>
        <source>away</source>
        <translation>ausencia</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>descarga</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>sin contar</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>planeado</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
</context>
<context>
    <name>DayPanel</name>
    <message>
        <source>Holds</source>
        <translation>Contiene</translation>
    </message>
    <message>
        <source>On</source>
        <translation>El</translation>
    </message>
    <message>
        <source>Rename the day</source>
        <translation>Cambiar el nombre del día</translation>
    </message>
    <message>
        <source>Weekday</source>
        <translation>Día de la semana</translation>
    </message>
    <message>
        <source>What the day holds</source>
        <translation>Qué contiene el día</translation>
    </message>
    <message>
        <source>in turn, any training day</source>
        <translation>alternado, cualquier día de entrenamiento</translation>
    </message>
</context>
<context>
    <name>Deload</name>
    <message>
        <source>1 exercise</source>
        <translation>1 ejercicio</translation>
    </message>
    <message>
        <source>A deload is due.</source>
        <translation>Toca una descarga.</translation>
    </message>
    <message>
        <source>A deload is planned from {day} on.</source>
        <translation>Hay una descarga planeada desde el {day}.</translation>
    </message>
    <message>
        <source>A deload runs until {day}.</source>
        <translation>Hay una descarga hasta el {day}.</translation>
    </message>
    <message>
        <source>Every 5.6 ± 2.3 weeks for 6.4 ± 1.7 days, less volume and load, more in reserve, the same exercises and days: survey of 246 competitive athletes, Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y. Less intensity, volume and closeness to failure: Bell 2023, Sports Med Open 9:87, DOI 10.1186/s40798-023-00633-0. Every 4-8 weeks: Bell 2025, Strength Cond J. By how much to cut is published nowhere: the factors are yours. The thresholds of the signs, and two at once, are common practice.</source>
        <translation>Cada 5,6 ± 2,3 semanas durante 6,4 ± 1,7 días, con menos volumen y carga, más reserva y los mismos ejercicios y días: encuesta a 246 atletas de competición, Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y. Menos intensidad, volumen y cercanía al fallo: Bell 2023, Sports Med Open 9:87, DOI 10.1186/s40798-023-00633-0. Cada 4-8 semanas: Bell 2025, Strength Cond J. Cuánto recortar no está publicado: los factores se eligen aquí. Los umbrales de las señales, y dos a la vez, son práctica habitual.</translation>
    </message>
    <message>
        <source>More is known by {day}.</source>
        <translation>Se sabrá más el {day}.</translation>
    </message>
    <message>
        <source>No clear difference of performance: {likely} (80 %: {low} to {high})</source>
        <translation>Sin diferencia clara de rendimiento: {likely} (80 %: {low} a {high})</translation>
    </message>
    <message>
        <source>No session is recorded yet.</source>
        <translation>Aún no hay sesiones registradas.</translation>
    </message>
    <message>
        <source>No week</source>
        <translation>Ninguna semana</translation>
    </message>
    <message>
        <source>Nothing asks for a deload now.</source>
        <translation>Nada pide una descarga ahora.</translation>
    </message>
    <message>
        <source>Nothing is proposed until a licensed professional&apos;s clearance is recorded.</source>
        <translation>No se propone nada hasta registrar la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>Performance after against before: {likely} (80 %: {low} to {high})</source>
        <translation>Rendimiento de después frente al de antes: {likely} (80 %: {low} a {high})</translation>
    </message>
    <message>
        <source>Positions resume where they stood. After these {weeks} every exercise stands where it would stand without it.</source>
        <translation>Las posiciones siguen donde estaban. Tras estas {weeks}, cada ejercicio está donde estaría sin ella.</translation>
    </message>
    <message>
        <source>Positions resume where they stood. If all goes as asked, after these {weeks} {count} of {all} exercises stand elsewhere than without it:</source>
        <translation>Las posiciones siguen donde estaban. Si todo va como se pide, tras estas {weeks} {count} de {all} ejercicios están en otro punto que sin ella:</translation>
    </message>
    <message>
        <source>Several signs at once speak for a deload soon.</source>
        <translation>Varias señales a la vez aconsejan una descarga pronto.</translation>
    </message>
    <message>
        <source>Signs seen ({count}; {needed} make a deload due): {told}.</source>
        <translation>Señales vistas ({count}; con {needed} toca una descarga): {told}.</translation>
    </message>
    <message>
        <source>Signs seen: none of plateaus, wellness down, effort up at the same work, aches.</source>
        <translation>Señales vistas: ninguna de estas: estancamientos, menos bienestar, más esfuerzo con el mismo trabajo, dolencias.</translation>
    </message>
    <message>
        <source>The next deload is due from {day} on.</source>
        <translation>La próxima descarga toca desde el {day}.</translation>
    </message>
    <message>
        <source>The program has a deload from {day} on.</source>
        <translation>El programa tiene una descarga desde el {day}.</translation>
    </message>
    <message>
        <source>Too few sessions to say: {before} before and {after} after it are needed of an exercise.</source>
        <translation>Muy pocas sesiones para decirlo: hacen falta {before} antes y {after} después de un mismo ejercicio.</translation>
    </message>
    <message>
        <source>aches noted on {ache_days} of the last 14 days</source>
        <translation>dolencias anotadas en {ache_days} de los últimos 14 días</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation>y {count} más</translation>
    </message>
    <message>
        <source>effort rose from {effort_before} to {effort_now} at no more work</source>
        <translation>el esfuerzo subió de {effort_before} a {effort_now} sin más trabajo</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>reps in reserve fell from {rir_before} to {rir_now} at the same work</source>
        <translation>las repeticiones en reserva bajaron de {rir_before} a {rir_now} con el mismo trabajo</translation>
    </message>
    <message>
        <source>sets {times} {factor}, load {minus} {percent} %</source>
        <translation>series {times} {factor}, carga {minus} {percent} %</translation>
    </message>
    <message>
        <source>wellness fell from {wellness_before} to {wellness_now} (of 5)</source>
        <translation>el bienestar bajó de {wellness_before} a {wellness_now} (de 5)</translation>
    </message>
    <message>
        <source>{built}; one is proposed every {every}.</source>
        <translation>{built}; se propone una cada {every}.</translation>
    </message>
    <message>
        <source>{built}; the program asks for none.</source>
        <translation>{built}; el programa no pide descarga.</translation>
    </message>
    <message>
        <source>{change} over {lines}; the trend before promised {promised}.</source>
        <translation>{change} en {lines}; la tendencia anterior prometía {promised}.</translation>
    </message>
    <message>
        <source>{count} exercises</source>
        <translation>{count} ejercicios</translation>
    </message>
    <message>
        <source>{exercise}: {planned} instead of {usual}</source>
        <translation>{exercise}: {planned} en lugar de {usual}</translation>
    </message>
    <message>
        <source>{lines} exercises have probably stopped growing</source>
        <translation>{lines} ejercicios probablemente han dejado de crecer</translation>
    </message>
    <message>
        <source>{weeks} of building since {day}</source>
        <translation>{weeks} de desarrollo desde el {day}</translation>
    </message>
</context>
<context>
    <name>DeloadDays</name>
    <message>
        <source>No training is planned in these days, so there is nothing to ease.</source>
        <translation>No hay entrenamiento planeado estos días: no hay nada que aligerar.</translation>
    </message>
    <message>
        <source>What it asks</source>
        <translation>Qué pide</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>como siempre</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>descarga</translation>
    </message>
    <message>
        <source>{usual} {arrow} {eased}</source>
        <translation>{usual} {arrow} {eased}</translation>
    </message>
</context>
<context>
    <name>DeloadList</name>
    <message>
        <source>Before and after are no proof: nobody knows what would have come without it. Strength is the trend of the estimated maximum, up to eight weeks before and four weeks after.</source>
        <translation>Antes y después no prueban nada: nadie sabe qué habría pasado sin ella. La fuerza es la tendencia del máximo estimado, hasta ocho semanas antes y cuatro después.</translation>
    </message>
    <message>
        <source>By exercise</source>
        <translation>Por ejercicio</translation>
    </message>
    <message>
        <source>Deloads</source>
        <translation>Descargas</translation>
    </message>
    <message>
        <source>None yet. Once one is over, here it is told whether it helped.</source>
        <translation>Ninguna aún. Cuando termine una, aquí se dirá si ayudó.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove the deload {days}</source>
        <translation>Quitar la descarga {days}</translation>
    </message>
    <message>
        <source>by the program</source>
        <translation>por el programa</translation>
    </message>
    <message>
        <source>by the signs</source>
        <translation>por las señales</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>planeada</translation>
    </message>
    <message>
        <source>{before} before, {after} after</source>
        <translation>{before} antes, {after} después</translation>
    </message>
</context>
<context>
    <name>DeloadPart</name>
    <message>
        <source>A week earlier</source>
        <translation>Una semana antes</translation>
    </message>
    <message>
        <source>A week later</source>
        <translation>Una semana después</translation>
    </message>
    <message>
        <source>Deload of {name}</source>
        <translation>Descarga de {name}</translation>
    </message>
    <message>
        <source>Deload {days} for {name}</source>
        <translation>Descarga {days} para {name}</translation>
    </message>
    <message>
        <source>Ease it so</source>
        <translation>Aligerar así</translation>
    </message>
    <message>
        <source>How deloads ease</source>
        <translation>Cómo aligeran las descargas</translation>
    </message>
    <message>
        <source>In the program</source>
        <translation>En el programa</translation>
    </message>
    <message>
        <source>It cannot begin before this week.</source>
        <translation>No puede empezar antes de esta semana.</translation>
    </message>
    <message>
        <source>Load lower by percent</source>
        <translation>Bajar la carga un porcentaje</translation>
    </message>
    <message>
        <source>Move it here</source>
        <translation>Pasarla aquí</translation>
    </message>
    <message>
        <source>Numbers…</source>
        <translation>Números…</translation>
    </message>
    <message>
        <source>Plan a deload for {name}</source>
        <translation>Planear una descarga para {name}</translation>
    </message>
    <message>
        <source>Plan this week</source>
        <translation>Planear esta semana</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Planeada</translation>
    </message>
    <message>
        <source>Remove the deload from {day}</source>
        <translation>Quitar la descarga del {day}</translation>
    </message>
    <message>
        <source>Sets a week, eased over usual; hatched: deload</source>
        <translation>Series por semana, aligeradas sobre habituales; rayado: descarga</translation>
    </message>
    <message>
        <source>Sets times</source>
        <translation>Series por</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Fuentes</translation>
    </message>
    <message>
        <source>The weeks after it</source>
        <translation>Las semanas siguientes</translation>
    </message>
    <message>
        <source>There is a deload already: {days}.</source>
        <translation>Ya hay una descarga: {days}.</translation>
    </message>
    <message>
        <source>These are your settings: they hold for everybody from now on; the weeks between, where no program says how many.</source>
        <translation>Son ajustes propios: valen para todos desde ahora; las semanas entre medias, donde ningún programa dice cuántas.</translation>
    </message>
    <message>
        <source>Weeks between, without a program</source>
        <translation>Semanas entre medias, sin programa</translation>
    </message>
    <message>
        <source>Weeks to come</source>
        <translation>Semanas por venir</translation>
    </message>
    <message>
        <source>load lower by %</source>
        <translation>carga menos %</translation>
    </message>
    <message>
        <source>sets ×</source>
        <translation>series ×</translation>
    </message>
    <message>
        <source>weeks between</source>
        <translation>semanas entre medias</translation>
    </message>
</context>
<context>
    <name>DeloadWeeks</name>
    <message>
        <source>Deload from {day}. Sets a week: {weeks}</source>
        <translation>Descarga desde el {day}. Series por semana: {weeks}</translation>
    </message>
    <message>
        <source>Left and right move it by a week, Return plans it.</source>
        <translation>Izquierda y derecha la mueven una semana, Intro la planea.</translation>
    </message>
    <message>
        <source>{day}: {sets}</source>
        <translation>{day}: {sets}</translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>Course</source>
        <translation>Evolución</translation>
    </message>
    <message>
        <source>Days since the last session.</source>
        <translation>Días desde la última sesión.</translation>
    </message>
    <message>
        <source>Days trained of those planned, in the last four weeks.</source>
        <translation>Días entrenados de los planeados, en las últimas cuatro semanas.</translation>
    </message>
    <message>
        <source>Deload</source>
        <translation>Descarga</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Estimated maximum of the main line, week by week; hard sets a week where there is none.</source>
        <translation>Máximo estimado de la línea principal, semana a semana; series duras por semana donde no lo hay.</translation>
    </message>
    <message>
        <source>Farthest goal first</source>
        <translation>Primero la meta más lejana</translation>
    </message>
    <message>
        <source>Fewest plateaus first</source>
        <translation>Primero menos estancamientos</translation>
    </message>
    <message>
        <source>Goal</source>
        <translation>Meta</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Última</translation>
    </message>
    <message>
        <source>Least gained first</source>
        <translation>Primero quien menos mejora</translation>
    </message>
    <message>
        <source>Least of the plan done first</source>
        <translation>Primero quien menos cumple el plan</translation>
    </message>
    <message>
        <source>Lines that have probably stopped gaining.</source>
        <translation>Líneas que probablemente han dejado de avanzar.</translation>
    </message>
    <message>
        <source>Longest ago first</source>
        <translation>Primero lo más antiguo</translation>
    </message>
    <message>
        <source>Most gained first</source>
        <translation>Primero quien más mejora</translation>
    </message>
    <message>
        <source>Most of the plan done first</source>
        <translation>Primero quien más cumple el plan</translation>
    </message>
    <message>
        <source>Most plateaus first</source>
        <translation>Primero más estancamientos</translation>
    </message>
    <message>
        <source>Nearest goal first</source>
        <translation>Primero la meta más cercana</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Próxima</translation>
    </message>
    <message>
        <source>Next deload first</source>
        <translation>Primero la descarga más próxima</translation>
    </message>
    <message>
        <source>Next deload last</source>
        <translation>La descarga más próxima al final</translation>
    </message>
    <message>
        <source>Next to train first</source>
        <translation>Primero quien entrena antes</translation>
    </message>
    <message>
        <source>Next to train last</source>
        <translation>Quien entrena antes, al final</translation>
    </message>
    <message>
        <source>Plateau</source>
        <translation>Estancado</translation>
    </message>
    <message>
        <source>Sorted by name</source>
        <translation>Por nombre</translation>
    </message>
    <message>
        <source>Sorted by name, backwards</source>
        <translation>Por nombre, al revés</translation>
    </message>
    <message>
        <source>Sorted by need</source>
        <translation>Por necesidad</translation>
    </message>
    <message>
        <source>Sorted by need: stops, who trains today, cautions.</source>
        <translation>Por necesidad: altos, quién entrena hoy, avisos.</translation>
    </message>
    <message>
        <source>The most serious caution, or what goes on.</source>
        <translation>El aviso más serio, o lo que está en curso.</translation>
    </message>
    <message>
        <source>The next deload: planned, due by the program&apos;s rhythm, or advised by what is seen.</source>
        <translation>La próxima descarga: planeada, la que toca por el ritmo del programa o la que aconsejan las señales.</translation>
    </message>
    <message>
        <source>The next training day of the program.</source>
        <translation>El próximo día de entrenamiento del programa.</translation>
    </message>
    <message>
        <source>Trained last first</source>
        <translation>Primero lo más reciente</translation>
    </message>
    <message>
        <source>Trainee</source>
        <translation>Atleta</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Qué mirar</translation>
    </message>
    <message>
        <source>When the trend reaches the goal, with 80 % certainty.</source>
        <translation>Cuándo alcanza la tendencia la meta, con una certeza del 80 %.</translation>
    </message>
    <message>
        <source>about now</source>
        <translation>hacia ahora</translation>
    </message>
    <message>
        <source>about {day}</source>
        <translation>hacia {day}</translation>
    </message>
    <message>
        <source>advised</source>
        <translation>conviene</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation>y {count} más</translation>
    </message>
    <message>
        <source>by {day}</source>
        <translation>antes del {day}</translation>
    </message>
    <message>
        <source>due</source>
        <translation>toca</translation>
    </message>
    <message>
        <source>from {day}</source>
        <translation>desde {day}</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>not in a year</source>
        <translation>no en un año</translation>
    </message>
    <message>
        <source>reached</source>
        <translation>alcanzada</translation>
    </message>
    <message>
        <source>to {day}</source>
        <translation>hasta {day}</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>{done} of {planned}</source>
        <translation>{done}/{planned}</translation>
    </message>
    <message>
        <source>{first} to {last} sets a week</source>
        <translation>{first} a {last} series por semana</translation>
    </message>
    <message>
        <source>{line} +{count}</source>
        <translation>{line} +{count}</translation>
    </message>
    <message>
        <source>{line} {first} to {last}</source>
        <translation>{line} {first} a {last}</translation>
    </message>
</context>
<context>
    <name>DeskOverview</name>
    <message>
        <source>1 needs attention</source>
        <translation>1 necesita atención</translation>
    </message>
    <message>
        <source>1 trains today</source>
        <translation>1 entrena hoy</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>All, who trains today, who needs attention</source>
        <translation>Todos, quién entrena hoy, quién necesita atención</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filtrar</translation>
    </message>
    <message>
        <source>Filter by any word</source>
        <translation>Filtrar por palabra</translation>
    </message>
    <message>
        <source>Needs attention</source>
        <translation>Piden atención</translation>
    </message>
    <message>
        <source>Nobody is like that.</source>
        <translation>No hay nadie así.</translation>
    </message>
    <message>
        <source>Nobody is on the roster yet</source>
        <translation>Aún no hay nadie en la lista</translation>
    </message>
    <message>
        <source>Open the screen that the cell speaks of</source>
        <translation>Abrir la pantalla de la que habla la celda</translation>
    </message>
    <message>
        <source>Print the sheet of the row</source>
        <translation>Imprimir la hoja de la fila</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>Sheet of {name}</source>
        <translation>Hoja de {name}</translation>
    </message>
    <message>
        <source>Shift+Return</source>
        <translation>Mayús+Intro</translation>
    </message>
    <message>
        <source>Show only rows with these words</source>
        <translation>Mostrar solo las filas con estas palabras</translation>
    </message>
    <message>
        <source>Sort by the column stood on, or the other way round</source>
        <translation>Ordenar por la columna del cursor, o al revés</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Who is shown</source>
        <translation>Quién se muestra</translation>
    </message>
    <message>
        <source>nobody trains today</source>
        <translation>hoy no entrena nadie</translation>
    </message>
    <message>
        <source>reading records, {known} of {everybody}</source>
        <translation>leyendo registros, {known} de {everybody}</translation>
    </message>
    <message>
        <source>{count} need attention</source>
        <translation>{count} necesitan atención</translation>
    </message>
    <message>
        <source>{count} train today</source>
        <translation>{count} entrenan hoy</translation>
    </message>
    <message>
        <source>{screen} of {name}</source>
        <translation>{screen} de {name}</translation>
    </message>
</context>
<context>
    <name>DeskTable</name>
    <message>
        <source>Everybody. {order}</source>
        <translation>Todos. {order}</translation>
    </message>
</context>
<context>
    <name>DraftPanel</name>
    <message>
        <source>A balanced week from these wishes, each choice explained.</source>
        <translation>Una semana equilibrada según estos deseos, con cada elección explicada.</translation>
    </message>
    <message>
        <source>An ordinary program to edit; nothing is saved until you take it.</source>
        <translation>Un programa normal que se puede editar; no se guarda nada hasta aceptarlo.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Draft a program</source>
        <translation>Hacer un borrador de programa</translation>
    </message>
    <message>
        <source>Draft it</source>
        <translation>Hacer borrador</translation>
    </message>
    <message>
        <source>Drafting</source>
        <translation>Preparando el borrador</translation>
    </message>
    <message>
        <source>It does not fit. Trying more days…</source>
        <translation>No cabe. Probando con más días…</translation>
    </message>
    <message>
        <source>It does not fit. Trying more equipment…</source>
        <translation>No cabe. Probando con más equipo…</translation>
    </message>
    <message>
        <source>It does not fit. Trying more minutes…</source>
        <translation>No cabe. Probando con más minutos…</translation>
    </message>
    <message>
        <source>It does not fit. Trying to avoid less…</source>
        <translation>No cabe. Probando a evitar menos…</translation>
    </message>
    <message>
        <source>Looking for the week that balances best…</source>
        <translation>Buscando la semana más equilibrada…</translation>
    </message>
    <message>
        <source>On record for {name}, to avoid: {avoid}. Say it above too.</source>
        <translation>Anotado de {name}, evitar: {avoid}. Indicarlo también arriba.</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Aceptarlo</translation>
    </message>
    <message>
        <source>for {name}</source>
        <translation>para {name}</translation>
    </message>
</context>
<context>
    <name>DraftResult</name>
    <message>
        <source>No single wish helps if it alone is relaxed: change two of them, such as more minutes and less to avoid.</source>
        <translation>Ningún deseo por sí solo basta: cambiar dos, por ejemplo más minutos y evitar menos.</translation>
    </message>
    <message>
        <source>Relax one of them; each of these was tried, and leads to a program.</source>
        <translation>Relajar uno de ellos; cada uno se ha probado y da un programa.</translation>
    </message>
    <message>
        <source>Relax this wish and draft again</source>
        <translation>Relajar este deseo y repetir el borrador</translation>
    </message>
    <message>
        <source>Sets a week</source>
        <translation>Series por semana</translation>
    </message>
    <message>
        <source>These wishes cannot be met together</source>
        <translation>Estos deseos no se pueden cumplir juntos</translation>
    </message>
    <message>
        <source>Why this week</source>
        <translation>Por qué esta semana</translation>
    </message>
</context>
<context>
    <name>DraftWishesBlock</name>
    <message>
        <source>Avoid</source>
        <translation>Evitar</translation>
    </message>
    <message>
        <source>Days a week</source>
        <translation>Días por semana</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Goal</source>
        <translation>Meta</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Nivel</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>Minutes a session</source>
        <translation>Minutos por sesión</translation>
    </message>
    <message>
        <source>Patterns, exercises, muscles, or words in their names, with commas between</source>
        <translation>Patrones, ejercicios, músculos o palabras de sus nombres, separados por comas</translation>
    </message>
    <message>
        <source>lunge, deadlift, chest</source>
        <translation>zancada, peso muerto, pecho</translation>
    </message>
    <message>
        <source>what {name} owns</source>
        <translation>lo que tiene {name}</translation>
    </message>
</context>
<context>
    <name>Drafts</name>
    <message>
        <source>Allow again: {to}</source>
        <translation>Volver a permitir: {to}</translation>
    </message>
    <message>
        <source>Every {every}th week is a deload</source>
        <translation>Descarga cada {every} semanas</translation>
    </message>
    <message>
        <source>Give it {to} a session</source>
        <translation>Darle {to} por sesión</translation>
    </message>
    <message>
        <source>Have more equipment: {to}</source>
        <translation>Contar con más equipo: {to}</translation>
    </message>
    <message>
        <source>Loads start light: set each trainee&apos;s own, or test first</source>
        <translation>Las cargas empiezan ligeras: fijar la de cada atleta, o probar antes</translation>
    </message>
    <message>
        <source>No deload planned: your call for novices</source>
        <translation>Sin descarga planeada: con principiantes se decide aparte</translation>
    </message>
    <message>
        <source>One day a week; {advised} are advised for adults</source>
        <translation>Un día por semana; para adultos se aconsejan {advised}</translation>
    </message>
    <message>
        <source>Train on {to} days a week</source>
        <translation>Entrenar {to} días por semana</translation>
    </message>
    <message>
        <source>Trained on {weekdays}, as far apart as they can be</source>
        <translation>Se entrena {weekdays}, tan separados como se puede</translation>
    </message>
    <message>
        <source>Variations start easy: a test says where to begin</source>
        <translation>Las variaciones empiezan fáciles: una prueba dice por dónde empezar</translation>
    </message>
    <message>
        <source>advanced</source>
        <translation>avanzado</translation>
    </message>
    <message>
        <source>as above</source>
        <translation>como arriba</translation>
    </message>
    <message>
        <source>barbell, bench, a bar to hang from</source>
        <translation>barra, banco, barra de dominadas</translation>
    </message>
    <message>
        <source>barbell, dumbbells, kettlebells, bench, bars, rings, box</source>
        <translation>barra, mancuernas, kettlebells, banco, barras, anillas, cajón</translation>
    </message>
    <message>
        <source>dumbbells and a bench</source>
        <translation>mancuernas y banco</translation>
    </message>
    <message>
        <source>floor and wall</source>
        <translation>suelo y pared</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation>intermedio</translation>
    </message>
    <message>
        <source>no {pattern}: it is to be avoided</source>
        <translation>sin {pattern}: se pide evitarlo</translation>
    </message>
    <message>
        <source>no {pattern}: the equipment has nothing for it</source>
        <translation>sin {pattern}: el equipo no da para ello</translation>
    </message>
    <message>
        <source>no {pattern}: there is no time for it</source>
        <translation>sin {pattern}: no hay tiempo para ello</translation>
    </message>
    <message>
        <source>novice</source>
        <translation>principiante</translation>
    </message>
    <message>
        <source>size</source>
        <translation>hipertrofia</translation>
    </message>
    <message>
        <source>skill</source>
        <translation>habilidad</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>fuerza</translation>
    </message>
    <message>
        <source>{day}: {first} and {second} in turn, to save time</source>
        <translation>{day}: {first} y {second} alternados, para ahorrar tiempo</translation>
    </message>
    <message>
        <source>{day}: {minutes} at first, {most} at the most; {allowed} are there</source>
        <translation>{day}: {minutes} al principio, {most} como mucho; hay {allowed}</translation>
    </message>
    <message>
        <source>{exercise}: {fewest} to {most}, rest {rest_s}; grows by {variables}</source>
        <translation>{exercise}: {fewest} a {most}, descanso {rest_s}; crece por {variables}</translation>
    </message>
    <message>
        <source>{exercise}: {fewest} to {most}, {reserve} in reserve, rest {rest_s}; grows by {variables}</source>
        <translation>{exercise}: {fewest} a {most}, {reserve} en reserva, descanso {rest_s}; crece por {variables}</translation>
    </message>
    <message>
        <source>{exercise}: {sets} sets on {days} days, for the {pattern}</source>
        <translation>{exercise}: {sets} series en {days} días, por el patrón de {pattern}</translation>
    </message>
    <message>
        <source>{exercise}: {sets} sets, for the {pattern}</source>
        <translation>{exercise}: {sets} series, por el patrón de {pattern}</translation>
    </message>
    <message>
        <source>{muscle}: {sets} of {mark} sets; nothing there trains it</source>
        <translation>{muscle}: {sets} de {mark} series; nada disponible lo entrena</translation>
    </message>
    <message>
        <source>{muscle}: {sets} of {mark} sets; the rest is avoided</source>
        <translation>{muscle}: {sets} de {mark} series; el resto se evita</translation>
    </message>
    <message>
        <source>{muscle}: {sets} of {mark} sets; there is no time for more</source>
        <translation>{muscle}: {sets} de {mark} series; no hay tiempo para más</translation>
    </message>
    <message>
        <source>{muscle}: {sets} sets on {days} days; the mark is {mark}</source>
        <translation>{muscle}: {sets} series en {days} días; la referencia es {mark}</translation>
    </message>
    <message>
        <source>{pattern} on {first} and {second}: no other weekdays are free</source>
        <translation>{pattern} el {first} y el {second}: no hay otros días libres</translation>
    </message>
    <message>
        <source>{push} sets pushed and {pull} pulled; {upper} of the upper body, {lower} lower</source>
        <translation>{push} series de empuje y {pull} de tracción; {upper} de tren superior, {lower} de tren inferior</translation>
    </message>
</context>
<context>
    <name>EffectPanel</name>
    <message>
        <source>Go on typing</source>
        <translation>Seguir escribiendo</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation>Guardar la corrección</translation>
    </message>
    <message>
        <source>This session lies in the past</source>
        <translation>Esta sesión está en el pasado</translation>
    </message>
</context>
<context>
    <name>EmptyDay</name>
    <message>
        <source>Add an exercise</source>
        <translation>Añadir un ejercicio</translation>
    </message>
    <message>
        <source>Days away</source>
        <translation>Días de ausencia</translation>
    </message>
    <message>
        <source>Next training day</source>
        <translation>Próximo día de entrenamiento</translation>
    </message>
    <message>
        <source>What was trained without a plan can be typed all the same.</source>
        <translation>Lo entrenado sin plan se puede escribir igualmente.</translation>
    </message>
</context>
<context>
    <name>EquipmentEditor</name>
    <message>
        <source>Bands, measured twice</source>
        <translation>Bandas, medidas dos veces</translation>
    </message>
    <message>
        <source>Bars</source>
        <translation>Barras</translation>
    </message>
    <message>
        <source>Bars to row under</source>
        <translation>Barras para remo</translation>
    </message>
    <message>
        <source>Boxes, chairs, stairs</source>
        <translation>Cajones, sillas, escalones</translation>
    </message>
    <message>
        <source>Collars of a bar, both</source>
        <translation>Cierres de una barra, los dos</translation>
    </message>
    <message>
        <source>Collars of a bar, both, {unit}</source>
        <translation>Cierres de una barra, los dos, {unit}</translation>
    </message>
    <message>
        <source>Discs (not pairs)</source>
        <translation>Discos (sueltos)</translation>
    </message>
    <message>
        <source>Discs for the handles</source>
        <translation>Discos para mancuernas</translation>
    </message>
    <message>
        <source>Dumbbell handles to load</source>
        <translation>Mancuernas de disco</translation>
    </message>
    <message>
        <source>Dumbbells</source>
        <translation>Mancuernas</translation>
    </message>
    <message>
        <source>Help of a machine</source>
        <translation>Ayuda de una máquina</translation>
    </message>
    <message>
        <source>Kettlebells</source>
        <translation>Kettlebells</translation>
    </message>
    <message>
        <source>Machines with a stack</source>
        <translation>Máquinas de placas</translation>
    </message>
    <message>
        <source>There is also</source>
        <translation>También hay</translation>
    </message>
    <message>
        <source>Vest or belt, loads</source>
        <translation>Chaleco o cinturón, cargas</translation>
    </message>
    <message>
        <source>bar to hang on</source>
        <translation>barra de dominadas</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>banco</translation>
    </message>
    <message>
        <source>each</source>
        <translation>c/u</translation>
    </message>
    <message>
        <source>first</source>
        <translation>primera</translation>
    </message>
    <message>
        <source>half step</source>
        <translation>medio paso</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>unidades</translation>
    </message>
    <message>
        <source>last</source>
        <translation>última</translation>
    </message>
    <message>
        <source>long</source>
        <translation>larga</translation>
    </message>
    <message>
        <source>low bar</source>
        <translation>barra baja</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>parallel bars</source>
        <translation>paralelas</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>tracción</translation>
    </message>
    <message>
        <source>rings</source>
        <translation>anillas</translation>
    </message>
    <message>
        <source>short</source>
        <translation>corta</translation>
    </message>
    <message>
        <source>step</source>
        <translation>paso</translation>
    </message>
    <message>
        <source>straps</source>
        <translation>correas</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>pared</translation>
    </message>
</context>
<context>
    <name>EraseQuestion</name>
    <message>
        <source>Erase everything of {name}?</source>
        <translation>¿Borrar todo lo de {name}?</translation>
    </message>
    <message>
        <source>Erase for good</source>
        <translation>Borrar para siempre</translation>
    </message>
    <message>
        <source>Everything of this person goes from the data file and from every backup and copy of it; a damaged copy, which cannot be rewritten, is removed. Files written elsewhere (sheets, exports) stay. It cannot be undone.</source>
        <translation>Todo lo de esta persona desaparece del archivo de datos y de cada copia de seguridad; una copia dañada, que no se puede reescribir, se quita. Los archivos guardados en otros sitios (hojas, exportaciones) quedan. No se puede deshacer.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Conservar</translation>
    </message>
    <message>
        <source>The name</source>
        <translation>El nombre</translation>
    </message>
    <message>
        <source>Type the name to go on</source>
        <translation>Escribir el nombre para continuar</translation>
    </message>
</context>
<context>
    <name>ExerciseChoice</name>
    <message>
        <source>A few letters of its name</source>
        <translation>Unas letras de su nombre</translation>
    </message>
    <message>
        <source>Add an exercise</source>
        <translation>Añadir un ejercicio</translation>
    </message>
    <message>
        <source>Which exercise was done instead?</source>
        <translation>¿Qué ejercicio se hizo en su lugar?</translation>
    </message>
    <message>
        <source>Which variation, from set {number} on?</source>
        <translation>¿Qué variación, desde la serie {number}?</translation>
    </message>
</context>
<context>
    <name>ExerciseCues</name>
    <message>
        <source>A cup of tea on the lower back would stay full.</source>
        <translation>Una taza de té sobre las lumbares no se derramaría.</translation>
    </message>
    <message>
        <source>All the way up, all the way down, one second at each end.</source>
        <translation>Hasta arriba del todo, hasta abajo del todo, un segundo en cada extremo.</translation>
    </message>
    <message>
        <source>Anchor high, finish with long arms and a short hold.</source>
        <translation>Anclaje alto, terminar con brazos largos y una pausa breve.</translation>
    </message>
    <message>
        <source>Ankles fixed, straight line from knee to head, fall as slowly as you can.</source>
        <translation>Tobillos fijos, línea recta de rodilla a cabeza, caer lo más lento posible.</translation>
    </message>
    <message>
        <source>Arm beside the ear, elbow locked, short steps.</source>
        <translation>Brazo junto a la oreja, codo bloqueado, pasos cortos.</translation>
    </message>
    <message>
        <source>Arms long, hands travel in a big arc to the thighs.</source>
        <translation>Brazos largos, las manos bajan en un gran arco hasta los muslos.</translation>
    </message>
    <message>
        <source>Back against the pad, ribs down, press without arching.</source>
        <translation>Espalda contra el respaldo, costillas abajo, empujar sin arquear.</translation>
    </message>
    <message>
        <source>Back close to the bench; stop when the upper arms are level.</source>
        <translation>Espalda cerca del banco; parar cuando los brazos queden horizontales.</translation>
    </message>
    <message>
        <source>Back flat on the pad, knees as wide as the toes point.</source>
        <translation>Espalda plana en el respaldo, rodillas tan abiertas como apuntan los pies.</translation>
    </message>
    <message>
        <source>Back flat on the wall, shins upright, hands off the thighs.</source>
        <translation>Espalda plana contra la pared, espinillas verticales, manos fuera de los muslos.</translation>
    </message>
    <message>
        <source>Band behind the back at chest height; stagger the feet.</source>
        <translation>Banda por detrás de la espalda a la altura del pecho; un pie delante del otro.</translation>
    </message>
    <message>
        <source>Band round the knees, small steps, feet never touch.</source>
        <translation>Banda alrededor de las rodillas, pasos pequeños, los pies nunca se tocan.</translation>
    </message>
    <message>
        <source>Band under the feet and behind the neck; bow until the hamstrings stop you.</source>
        <translation>Banda bajo los pies y tras la nuca; inclinarse hasta donde dejen los femorales.</translation>
    </message>
    <message>
        <source>Bar to the upper chest, hips stay on the bench.</source>
        <translation>Barra a la parte alta del pecho, la cadera no deja el banco.</translation>
    </message>
    <message>
        <source>Bell between the heels, long spine, squeeze at the top.</source>
        <translation>Pesa entre los talones, columna larga, apretar arriba.</translation>
    </message>
    <message>
        <source>Bell close to the chest, elbows inside the knees at the bottom.</source>
        <translation>Pesa cerca del pecho, codos por dentro de las rodillas abajo.</translation>
    </message>
    <message>
        <source>Bell held at the shoulder; do not lean towards it.</source>
        <translation>Pesa sujeta en el hombro; no inclinarse hacia ella.</translation>
    </message>
    <message>
        <source>Bells on the forearms, ribs down, breathe behind the shield.</source>
        <translation>Pesas sobre los antebrazos, costillas abajo, respirar tras el escudo.</translation>
    </message>
    <message>
        <source>Bells quiet beside the thighs, eyes on the far wall.</source>
        <translation>Pesas quietas junto a los muslos, vista en la pared del fondo.</translation>
    </message>
    <message>
        <source>Big breath, knees follow the toes, stand up as if pushing the floor away.</source>
        <translation>Aire adentro, rodillas en la línea de los pies, subir como empujando el suelo.</translation>
    </message>
    <message>
        <source>Body like a board; chest to the bar, pause, long arms at the bottom.</source>
        <translation>Cuerpo como una tabla; pecho a la barra, pausa, brazos largos abajo.</translation>
    </message>
    <message>
        <source>Breathe out as arm and leg go long; the back stays down.</source>
        <translation>Soltar el aire al alargar brazo y pierna; la espalda sigue abajo.</translation>
    </message>
    <message>
        <source>Chest glued to the bench, bar touches it from below each time.</source>
        <translation>Pecho pegado al banco, la barra lo toca desde abajo cada vez.</translation>
    </message>
    <message>
        <source>Chest to the ceiling, hips level with the shoulders.</source>
        <translation>Pecho al techo, cadera a la altura de los hombros.</translation>
    </message>
    <message>
        <source>Chest up to meet the bar; let the shoulder blades rise again.</source>
        <translation>Pecho arriba al encuentro de la barra; dejar subir de nuevo las escápulas.</translation>
    </message>
    <message>
        <source>Curl the hips up at the top; no swing between repetitions.</source>
        <translation>Enrollar la cadera arriba; sin balanceo entre repeticiones.</translation>
    </message>
    <message>
        <source>Curl the ribs towards the hips; the hips stay where they are.</source>
        <translation>Llevar las costillas hacia la cadera; la cadera no se mueve.</translation>
    </message>
    <message>
        <source>Deep stretch, pause, up onto the big toe.</source>
        <translation>Estiramiento profundo, pausa, subir sobre el dedo gordo.</translation>
    </message>
    <message>
        <source>Down in a straight line, most of the weight on the front heel.</source>
        <translation>Bajar en línea recta, casi todo el peso en el talón delantero.</translation>
    </message>
    <message>
        <source>Drop the back knee straight down; the bar stays level.</source>
        <translation>Bajar la rodilla trasera en vertical; la barra sigue horizontal.</translation>
    </message>
    <message>
        <source>Elbow tucked to the side, turn the forearm out, come back slowly.</source>
        <translation>Codo pegado al costado, girar el antebrazo hacia fuera, volver despacio.</translation>
    </message>
    <message>
        <source>Elbow under the shoulder, lift the lower hip away from the floor.</source>
        <translation>Codo bajo el hombro, despegar del suelo la cadera de abajo.</translation>
    </message>
    <message>
        <source>Elbows down in front of the ribs, no leaning back.</source>
        <translation>Codos abajo por delante de las costillas, sin echarse atrás.</translation>
    </message>
    <message>
        <source>Elbows pinned to the ribs; lower slower than you lift.</source>
        <translation>Codos clavados en las costillas; bajar más lento que subir.</translation>
    </message>
    <message>
        <source>Elbows point up and stay there; lower behind the head.</source>
        <translation>Codos apuntando arriba y quietos; bajar por detrás de la cabeza.</translation>
    </message>
    <message>
        <source>Elbows stay at shoulder height; bend only there.</source>
        <translation>Codos a la altura de los hombros; doblar solo ahí.</translation>
    </message>
    <message>
        <source>Elbows stay high from the first centimetre down to the last one up.</source>
        <translation>Codos altos desde el primer centímetro de bajada hasta el último de subida.</translation>
    </message>
    <message>
        <source>Eyes on the bell, one position at a time, same way down.</source>
        <translation>Vista en la pesa, una posición cada vez, bajar por el mismo camino.</translation>
    </message>
    <message>
        <source>Fists under the chin, ribs down, sit straight between the feet.</source>
        <translation>Puños bajo la barbilla, costillas abajo, sentarse recto entre los pies.</translation>
    </message>
    <message>
        <source>Fix the trunk like a table; pull the elbows, not the hands.</source>
        <translation>Tronco fijo como una mesa; tiran los codos, no las manos.</translation>
    </message>
    <message>
        <source>Forearms on the thighs; let the weight roll to the fingers.</source>
        <translation>Antebrazos sobre los muslos; dejar rodar el peso hasta los dedos.</translation>
    </message>
    <message>
        <source>Forearms upright all the way; bring the weights down beside the chest.</source>
        <translation>Antebrazos verticales todo el camino; bajar los pesos junto al pecho.</translation>
    </message>
    <message>
        <source>Free forearm on the thigh; the trunk does not turn.</source>
        <translation>Antebrazo libre sobre el muslo; el tronco no gira.</translation>
    </message>
    <message>
        <source>Handles at mid-chest height, shoulder blades stay on the pad.</source>
        <translation>Agarres a media altura del pecho, escápulas contra el respaldo.</translation>
    </message>
    <message>
        <source>Handles still, turn them out at the top, hips never sag.</source>
        <translation>Agarres quietos, girarlos hacia fuera arriba, la cadera nunca cae.</translation>
    </message>
    <message>
        <source>Hands a shoulder&apos;s width apart, elbows close to the ribs.</source>
        <translation>Manos a la anchura de los hombros, codos cerca de las costillas.</translation>
    </message>
    <message>
        <source>Head travels forward of the hands and back: three points of one triangle.</source>
        <translation>La cabeza va por delante de las manos y vuelve: tres puntos de un triángulo.</translation>
    </message>
    <message>
        <source>Heels close, drive them down, hold a second at the top.</source>
        <translation>Talones cerca, clavarlos en el suelo, un segundo arriba.</translation>
    </message>
    <message>
        <source>Hinge forward, spread the arms like opening a heavy curtain.</source>
        <translation>Inclinarse en bisagra, abrir los brazos como quien abre una cortina pesada.</translation>
    </message>
    <message>
        <source>Hips and shoulders stay square while the arms go long.</source>
        <translation>Cadera y hombros de frente mientras los brazos se alargan.</translation>
    </message>
    <message>
        <source>Hips lead, tail tucked; go only as far as the back stays flat.</source>
        <translation>Guía la cadera, pelvis recogida; llegar solo hasta donde la espalda siga plana.</translation>
    </message>
    <message>
        <source>Hips stay high while the heels slide out and back.</source>
        <translation>La cadera sigue alta mientras los talones van y vuelven.</translation>
    </message>
    <message>
        <source>Hips stay on the pad; heels to the seat.</source>
        <translation>La cadera no deja el cojín; talones al asiento.</translation>
    </message>
    <message>
        <source>Hold the weight against the breastbone and sit between your heels.</source>
        <translation>Sujetar el peso contra el esternón y sentarse entre los talones.</translation>
    </message>
    <message>
        <source>Hug a barrel; hands meet in front of the breastbone.</source>
        <translation>Abrazar un barril; las manos se encuentran delante del esternón.</translation>
    </message>
    <message>
        <source>Kneel under the anchor, pull the elbows into the back pockets.</source>
        <translation>De rodillas bajo el anclaje, llevar los codos a los bolsillos de atrás.</translation>
    </message>
    <message>
        <source>Knees a hand above the floor, hips as still as a table.</source>
        <translation>Rodillas a un palmo del suelo, cadera quieta como una mesa.</translation>
    </message>
    <message>
        <source>Knees out over the toes, hands inside them, hips close to the bar.</source>
        <translation>Rodillas abiertas sobre los pies, manos por dentro, cadera cerca de la barra.</translation>
    </message>
    <message>
        <source>Lead with the elbows, stop at shoulder height.</source>
        <translation>Guían los codos, parar a la altura de los hombros.</translation>
    </message>
    <message>
        <source>Lean first, lift second; elbows locked and turned forward.</source>
        <translation>Primero inclinarse, luego subir; codos bloqueados y girados hacia delante.</translation>
    </message>
    <message>
        <source>Lean in with a straight body; the elbows point forward.</source>
        <translation>Inclinarse con el cuerpo recto; los codos apuntan al frente.</translation>
    </message>
    <message>
        <source>Let the upper arms come to rest on the floor before each push.</source>
        <translation>Dejar reposar los brazos en el suelo antes de cada empuje.</translation>
    </message>
    <message>
        <source>Lift it like a deadlift, walk it like a full tray.</source>
        <translation>Levantarla como un peso muerto, llevarla como una bandeja llena.</translation>
    </message>
    <message>
        <source>Lift the shoulder blades, not the chin.</source>
        <translation>Levantar las escápulas, no la barbilla.</translation>
    </message>
    <message>
        <source>Long arms first, then drive the elbows to the ceiling.</source>
        <translation>Primero brazos largos, luego codos al techo.</translation>
    </message>
    <message>
        <source>Long neck at the bottom, long pause at the top.</source>
        <translation>Cuello largo abajo, pausa larga arriba.</translation>
    </message>
    <message>
        <source>Long rather than high; look at the floor.</source>
        <translation>Largo antes que alto; mirar al suelo.</translation>
    </message>
    <message>
        <source>Lower back stays on the pad; stop before it lifts.</source>
        <translation>Las lumbares siguen en el respaldo; parar antes de que se despeguen.</translation>
    </message>
    <message>
        <source>Lower the bar behind the forehead, elbows narrow.</source>
        <translation>Bajar la barra por detrás de la frente, codos cerrados.</translation>
    </message>
    <message>
        <source>No bounce: a second at the bottom, a second at the top.</source>
        <translation>Sin rebote: un segundo abajo, un segundo arriba.</translation>
    </message>
    <message>
        <source>One step back from the stack, elbows just in front of the ribs.</source>
        <translation>Un paso atrás desde la polea, codos justo delante de las costillas.</translation>
    </message>
    <message>
        <source>One straight plank from heel to head; the chest arrives first, not the hips.</source>
        <translation>Una plancha recta de talón a cabeza; llega primero el pecho, no la cadera.</translation>
    </message>
    <message>
        <source>Only the shoulders stay down; lower the body as one board.</source>
        <translation>Solo los hombros quedan abajo; bajar el cuerpo como una tabla.</translation>
    </message>
    <message>
        <source>Open without leaning; close slowly.</source>
        <translation>Abrir sin inclinarse; cerrar despacio.</translation>
    </message>
    <message>
        <source>Palms to you, chest to the bar, all the way down again.</source>
        <translation>Palmas hacia la cara, pecho a la barra, y abajo del todo otra vez.</translation>
    </message>
    <message>
        <source>Pause with the hands at the ribs before letting go slowly.</source>
        <translation>Pausa con las manos en las costillas antes de soltar despacio.</translation>
    </message>
    <message>
        <source>Press the lower back into the floor; if it lifts, shorten the lever.</source>
        <translation>Apretar las lumbares contra el suelo; si se despegan, acortar la palanca.</translation>
    </message>
    <message>
        <source>Pull high and close, then roll the chest over the hands.</source>
        <translation>Tirar alto y cerca, luego pasar el pecho por encima de las manos.</translation>
    </message>
    <message>
        <source>Pull the elbow past the hip without turning the chest.</source>
        <translation>Llevar el codo más allá de la cadera sin girar el pecho.</translation>
    </message>
    <message>
        <source>Pull to the forehead with the elbows high and the thumbs back.</source>
        <translation>Tirar hacia la frente con codos altos y pulgares atrás.</translation>
    </message>
    <message>
        <source>Push tall out of the shoulders, ribs in, fingers steer.</source>
        <translation>Crecer desde los hombros, costillas adentro, los dedos dirigen.</translation>
    </message>
    <message>
        <source>Push the floor away, lock the elbows, then lift the legs.</source>
        <translation>Empujar el suelo, bloquear los codos, luego levantar las piernas.</translation>
    </message>
    <message>
        <source>Push the handle straight out and let nothing turn you.</source>
        <translation>Empujar el agarre recto al frente y no dejarse girar.</translation>
    </message>
    <message>
        <source>Push the hips back until the hamstrings are long; the bar slides down the thighs.</source>
        <translation>Llevar la cadera atrás hasta alargar los femorales; la barra se desliza por los muslos.</translation>
    </message>
    <message>
        <source>Push through the whole foot; the hips stay square on the seat.</source>
        <translation>Empujar con todo el pie; la cadera sigue recta en el asiento.</translation>
    </message>
    <message>
        <source>Quiet steps; the front knee follows the second toe.</source>
        <translation>Pasos silenciosos; la rodilla delantera sigue al segundo dedo.</translation>
    </message>
    <message>
        <source>Reach the free heel far behind you; come up as one piece.</source>
        <translation>Llevar lejos atrás el talón libre; subir de una pieza.</translation>
    </message>
    <message>
        <source>Ribs down, move the head back for the bar and under it again.</source>
        <translation>Costillas abajo, apartar la cabeza para la barra y volver bajo ella.</translation>
    </message>
    <message>
        <source>Ribs down, squeeze at the top with the shins upright.</source>
        <translation>Costillas abajo, apretar arriba con las espinillas verticales.</translation>
    </message>
    <message>
        <source>Rise until the body is one line, not beyond it.</source>
        <translation>Subir hasta que el cuerpo sea una línea, no más.</translation>
    </message>
    <message>
        <source>Seat so that the handles start at chin height.</source>
        <translation>Asiento ajustado para que los agarres empiecen a la altura de la barbilla.</translation>
    </message>
    <message>
        <source>Set the stance once, then move only up and down.</source>
        <translation>Colocar los pies una vez, luego solo subir y bajar.</translation>
    </message>
    <message>
        <source>Short dip, straight down and up; the arms finish what the legs began.</source>
        <translation>Flexión breve, recto abajo y arriba; los brazos terminan lo que empiezan las piernas.</translation>
    </message>
    <message>
        <source>Shoulder blades together, bar to the lower chest, feet push the floor.</source>
        <translation>Escápulas juntas, barra a la parte baja del pecho, los pies empujan el suelo.</translation>
    </message>
    <message>
        <source>Shoulders away from the ears, thumbs round the bar.</source>
        <translation>Hombros lejos de las orejas, pulgares alrededor de la barra.</translation>
    </message>
    <message>
        <source>Shoulders away from the ears; down until the upper arm is level.</source>
        <translation>Hombros lejos de las orejas; bajar hasta que el brazo quede horizontal.</translation>
    </message>
    <message>
        <source>Shoulders straight up to the ears, pause, all the way down.</source>
        <translation>Hombros rectos hacia las orejas, pausa, abajo del todo.</translation>
    </message>
    <message>
        <source>Sit back onto the box without rocking, pause, stand up.</source>
        <translation>Sentarse atrás en el cajón sin mecerse, pausa, levantarse.</translation>
    </message>
    <message>
        <source>Sit over one foot, the other leg long, both heels down.</source>
        <translation>Sentarse sobre un pie, la otra pierna larga, ambos talones abajo.</translation>
    </message>
    <message>
        <source>Sit tall, shoulder blades first, then the elbows.</source>
        <translation>Sentarse alto, primero las escápulas, luego los codos.</translation>
    </message>
    <message>
        <source>Slide down the side of the thigh; no twist, no hurry.</source>
        <translation>Deslizar por el lado del muslo; sin giro, sin prisa.</translation>
    </message>
    <message>
        <source>Slight bend in the elbows that never changes.</source>
        <translation>Codos algo doblados, siempre igual.</translation>
    </message>
    <message>
        <source>Soft knees, bow from the hips, stop where the back would round.</source>
        <translation>Rodillas sueltas, inclinarse desde la cadera, parar donde la espalda se redondearía.</translation>
    </message>
    <message>
        <source>Squeeze the free fist; the forearm stays upright all the way.</source>
        <translation>Apretar el puño libre; el antebrazo sigue vertical todo el camino.</translation>
    </message>
    <message>
        <source>Stand in the middle, grip the centre of the handles, push the floor away.</source>
        <translation>De pie en el centro, coger el medio de los agarres, empujar el suelo.</translation>
    </message>
    <message>
        <source>Stand on the band and keep it tight at the bottom too.</source>
        <translation>Pisar la banda y mantenerla tensa también abajo.</translation>
    </message>
    <message>
        <source>Stand on the band with the ends at the shoulders; push hardest near the top.</source>
        <translation>Pisar la banda con los extremos en los hombros; empujar más cerca de arriba.</translation>
    </message>
    <message>
        <source>Stand on the band, hands at the shoulders, finish beside the ears.</source>
        <translation>Pisar la banda, manos en los hombros, terminar junto a las orejas.</translation>
    </message>
    <message>
        <source>Start from long arms, pull the elbows to the ribs, chin over the bar.</source>
        <translation>Empezar con brazos largos, codos a las costillas, barbilla sobre la barra.</translation>
    </message>
    <message>
        <source>Step long enough that the front shin stays nearly upright.</source>
        <translation>Paso lo bastante largo para que la espinilla delantera quede casi vertical.</translation>
    </message>
    <message>
        <source>Step through without a stop at the top, tall between steps.</source>
        <translation>Dar el paso sin parar arriba, erguido entre pasos.</translation>
    </message>
    <message>
        <source>Straight arms press the bar to the hips; the body stays level.</source>
        <translation>Brazos rectos que llevan la barra hacia la cadera; el cuerpo sigue horizontal.</translation>
    </message>
    <message>
        <source>Straight arms, squeeze the shoulder blades as the band meets the chest.</source>
        <translation>Brazos rectos, juntar las escápulas cuando la banda llega al pecho.</translation>
    </message>
    <message>
        <source>Straight wrist, free arm out to the side for balance.</source>
        <translation>Muñeca recta, brazo libre al lado para el equilibrio.</translation>
    </message>
    <message>
        <source>Straighten fully, hold one second, control the way down.</source>
        <translation>Estirar del todo, un segundo, controlar la bajada.</translation>
    </message>
    <message>
        <source>Take the slack out of the bar first, then stand up with it close to the legs.</source>
        <translation>Primero tensar la barra, luego levantarse con ella cerca de las piernas.</translation>
    </message>
    <message>
        <source>Tall and quiet: short quick steps, weights still at your sides.</source>
        <translation>Erguido y tranquilo: pasos cortos y rápidos, los pesos quietos a los lados.</translation>
    </message>
    <message>
        <source>The free leg and the trunk tip as one piece, hips square to the floor.</source>
        <translation>La pierna libre y el tronco bajan de una pieza, cadera de frente al suelo.</translation>
    </message>
    <message>
        <source>The hips throw the bell; the arms are ropes.</source>
        <translation>La cadera lanza la pesa; los brazos son cuerdas.</translation>
    </message>
    <message>
        <source>The upper leg lifts you; the lower foot only lets go.</source>
        <translation>La pierna de arriba sube el cuerpo; el pie de abajo solo suelta.</translation>
    </message>
    <message>
        <source>Thumbs under the breastbone, elbows brush the ribs.</source>
        <translation>Pulgares bajo el esternón, los codos rozan las costillas.</translation>
    </message>
    <message>
        <source>Thumbs up from start to end, shoulders still.</source>
        <translation>Pulgares arriba de principio a fin, hombros quietos.</translation>
    </message>
    <message>
        <source>Toes on the edge, heels sink before every repetition.</source>
        <translation>Puntas en el borde, los talones bajan antes de cada repetición.</translation>
    </message>
    <message>
        <source>Tuck the tail, squeeze the glutes, keep breathing.</source>
        <translation>Pelvis recogida, glúteos apretados, seguir respirando.</translation>
    </message>
    <message>
        <source>Turn the breastbone, not just the arms; heels light.</source>
        <translation>Girar el esternón, no solo los brazos; talones ligeros.</translation>
    </message>
    <message>
        <source>Turn the palms up on the way, no swing of the hips.</source>
        <translation>Girar las palmas hacia arriba al subir, sin balanceo de la cadera.</translation>
    </message>
    <message>
        <source>Upper arms are posts; only the forearms move.</source>
        <translation>Los brazos son postes; solo se mueven los antebrazos.</translation>
    </message>
    <message>
        <source>Walk as if both hands were full; no lean to either side.</source>
        <translation>Caminar como si las dos manos fueran llenas; sin inclinarse a ningún lado.</translation>
    </message>
    <message>
        <source>Walk away from the stack, let the cable pull the hips back, snap them forward.</source>
        <translation>Alejarse de la polea, dejar que el cable lleve la cadera atrás y llevarla al frente con fuerza.</translation>
    </message>
    <message>
        <source>Walk the feet forward to make it harder; the hips never sag.</source>
        <translation>Adelantar los pies para hacerlo más difícil; la cadera nunca cae.</translation>
    </message>
    <message>
        <source>Weights brush the thighs; the hips travel back, not down.</source>
        <translation>Los pesos rozan los muslos; la cadera va atrás, no abajo.</translation>
    </message>
    <message>
        <source>Weights hang beside the ankles, chest stays open.</source>
        <translation>Los pesos cuelgan junto a los tobillos, el pecho sigue abierto.</translation>
    </message>
    <message>
        <source>Weights hang still; the front leg does the work.</source>
        <translation>Los pesos cuelgan quietos; trabaja la pierna delantera.</translation>
    </message>
    <message>
        <source>Whole foot on the box, stand tall on top before coming down.</source>
        <translation>Todo el pie en el cajón, erguirse arriba antes de bajar.</translation>
    </message>
    <message>
        <source>Whole foot on the floor, knee over the toes, no bounce at the bottom.</source>
        <translation>Todo el pie en el suelo, rodilla sobre los dedos, sin rebote abajo.</translation>
    </message>
    <message>
        <source>Wrists over elbows; finish with the arms beside the ears.</source>
        <translation>Muñecas sobre codos; terminar con los brazos junto a las orejas.</translation>
    </message>
    <message>
        <source>Wrists over elbows; lower until the upper arms pass the bench.</source>
        <translation>Muñecas sobre codos; bajar hasta que los brazos pasen del banco.</translation>
    </message>
</context>
<context>
    <name>ExerciseNames</name>
    <message>
        <source>Anti-rotation press</source>
        <translation>Press antirrotación</translation>
    </message>
    <message>
        <source>Arch hold</source>
        <translation>Posición de arco</translation>
    </message>
    <message>
        <source>Back extension</source>
        <translation>Extensión de espalda</translation>
    </message>
    <message>
        <source>Back squat</source>
        <translation>Sentadilla trasera</translation>
    </message>
    <message>
        <source>Band anti-rotation press</source>
        <translation>Press antirrotación con banda</translation>
    </message>
    <message>
        <source>Band chest press</source>
        <translation>Press de pecho con banda</translation>
    </message>
    <message>
        <source>Band curl</source>
        <translation>Curl con banda</translation>
    </message>
    <message>
        <source>Band external rotation</source>
        <translation>Rotación externa con banda</translation>
    </message>
    <message>
        <source>Band good morning</source>
        <translation>Buenos días con banda</translation>
    </message>
    <message>
        <source>Band overhead press</source>
        <translation>Press militar con banda</translation>
    </message>
    <message>
        <source>Band pull-apart</source>
        <translation>Apertura de banda</translation>
    </message>
    <message>
        <source>Band pulldown</source>
        <translation>Jalón con banda</translation>
    </message>
    <message>
        <source>Band pushdown</source>
        <translation>Extensión de tríceps con banda</translation>
    </message>
    <message>
        <source>Band row</source>
        <translation>Remo con banda</translation>
    </message>
    <message>
        <source>Band side walk</source>
        <translation>Paso lateral con banda</translation>
    </message>
    <message>
        <source>Band squat</source>
        <translation>Sentadilla con banda</translation>
    </message>
    <message>
        <source>Barbell curl</source>
        <translation>Curl con barra</translation>
    </message>
    <message>
        <source>Barbell lunge</source>
        <translation>Zancada con barra</translation>
    </message>
    <message>
        <source>Barbell shrug</source>
        <translation>Encogimiento con barra</translation>
    </message>
    <message>
        <source>Barbell split squat</source>
        <translation>Sentadilla dividida con barra</translation>
    </message>
    <message>
        <source>Bench dip</source>
        <translation>Fondo en banco</translation>
    </message>
    <message>
        <source>Bench press</source>
        <translation>Press de banca</translation>
    </message>
    <message>
        <source>Bench pull</source>
        <translation>Remo tumbado en banco</translation>
    </message>
    <message>
        <source>Bent-over rear raise</source>
        <translation>Elevación posterior</translation>
    </message>
    <message>
        <source>Bent-over row</source>
        <translation>Remo inclinado con barra</translation>
    </message>
    <message>
        <source>Bird dog</source>
        <translation>Bird dog</translation>
    </message>
    <message>
        <source>Bodyweight lunge</source>
        <translation>Zancada con peso corporal</translation>
    </message>
    <message>
        <source>Bodyweight single-leg hinge</source>
        <translation>Bisagra a una pierna</translation>
    </message>
    <message>
        <source>Bodyweight squat</source>
        <translation>Sentadilla con peso corporal</translation>
    </message>
    <message>
        <source>Box squat</source>
        <translation>Sentadilla al cajón</translation>
    </message>
    <message>
        <source>Cable chest fly</source>
        <translation>Apertura en polea</translation>
    </message>
    <message>
        <source>Cable crunch</source>
        <translation>Crunch en polea</translation>
    </message>
    <message>
        <source>Cable curl</source>
        <translation>Curl en polea</translation>
    </message>
    <message>
        <source>Cable pull-through</source>
        <translation>Bisagra en polea</translation>
    </message>
    <message>
        <source>Calf raise</source>
        <translation>Elevación de talones</translation>
    </message>
    <message>
        <source>Chest-supported dumbbell row</source>
        <translation>Remo con pecho apoyado</translation>
    </message>
    <message>
        <source>Chin-up</source>
        <translation>Dominada supina</translation>
    </message>
    <message>
        <source>Close-grip bench press</source>
        <translation>Press de banca cerrado</translation>
    </message>
    <message>
        <source>Close-grip pulldown</source>
        <translation>Jalón con agarre cerrado</translation>
    </message>
    <message>
        <source>Close-hands push-up</source>
        <translation>Flexión cerrada</translation>
    </message>
    <message>
        <source>Crawl</source>
        <translation>Gateo</translation>
    </message>
    <message>
        <source>Curl on straps</source>
        <translation>Curl en correas</translation>
    </message>
    <message>
        <source>Curl-up</source>
        <translation>Encogimiento abdominal</translation>
    </message>
    <message>
        <source>Dead bug</source>
        <translation>Dead bug</translation>
    </message>
    <message>
        <source>Deadlift</source>
        <translation>Peso muerto</translation>
    </message>
    <message>
        <source>Dip</source>
        <translation>Fondo</translation>
    </message>
    <message>
        <source>Dumbbell Romanian deadlift</source>
        <translation>Peso muerto rumano con mancuernas</translation>
    </message>
    <message>
        <source>Dumbbell bench press</source>
        <translation>Press de banca con mancuernas</translation>
    </message>
    <message>
        <source>Dumbbell calf raise</source>
        <translation>Elevación de talones con mancuerna</translation>
    </message>
    <message>
        <source>Dumbbell chest fly</source>
        <translation>Apertura con mancuernas</translation>
    </message>
    <message>
        <source>Dumbbell curl</source>
        <translation>Curl con mancuernas</translation>
    </message>
    <message>
        <source>Dumbbell floor press</source>
        <translation>Press en el suelo con mancuernas</translation>
    </message>
    <message>
        <source>Dumbbell lunge</source>
        <translation>Zancada con mancuernas</translation>
    </message>
    <message>
        <source>Dumbbell overhead press</source>
        <translation>Press militar con mancuernas</translation>
    </message>
    <message>
        <source>Dumbbell shrug</source>
        <translation>Encogimiento con mancuernas</translation>
    </message>
    <message>
        <source>Dumbbell split squat</source>
        <translation>Sentadilla dividida con mancuernas</translation>
    </message>
    <message>
        <source>Dumbbell squat</source>
        <translation>Sentadilla con mancuernas</translation>
    </message>
    <message>
        <source>Dumbbell step-up</source>
        <translation>Subida al cajón con mancuernas</translation>
    </message>
    <message>
        <source>Face pull</source>
        <translation>Tracción a la cara</translation>
    </message>
    <message>
        <source>Farmer&apos;s carry</source>
        <translation>Paseo del granjero</translation>
    </message>
    <message>
        <source>Front lever</source>
        <translation>Front lever</translation>
    </message>
    <message>
        <source>Front squat</source>
        <translation>Sentadilla frontal</translation>
    </message>
    <message>
        <source>Front-rack carry</source>
        <translation>Paseo con carga frontal</translation>
    </message>
    <message>
        <source>Glute bridge</source>
        <translation>Puente de glúteos</translation>
    </message>
    <message>
        <source>Goblet squat</source>
        <translation>Sentadilla goblet</translation>
    </message>
    <message>
        <source>Good morning</source>
        <translation>Buenos días</translation>
    </message>
    <message>
        <source>Hammer curl</source>
        <translation>Curl martillo</translation>
    </message>
    <message>
        <source>Handstand</source>
        <translation>Parada de manos</translation>
    </message>
    <message>
        <source>Handstand push-up</source>
        <translation>Flexión en parada de manos</translation>
    </message>
    <message>
        <source>Hang</source>
        <translation>Suspensión en barra</translation>
    </message>
    <message>
        <source>Hanging knee and leg raise</source>
        <translation>Elevación de piernas en barra</translation>
    </message>
    <message>
        <source>Hex-bar carry</source>
        <translation>Paseo con barra hexagonal</translation>
    </message>
    <message>
        <source>Hex-bar deadlift</source>
        <translation>Peso muerto con barra hexagonal</translation>
    </message>
    <message>
        <source>Hip abduction</source>
        <translation>Abducción de cadera</translation>
    </message>
    <message>
        <source>Hip thrust</source>
        <translation>Empuje de cadera</translation>
    </message>
    <message>
        <source>Hollow hold</source>
        <translation>Posición hueca</translation>
    </message>
    <message>
        <source>Incline bench press</source>
        <translation>Press de banca inclinado</translation>
    </message>
    <message>
        <source>Incline dumbbell press</source>
        <translation>Press inclinado con mancuernas</translation>
    </message>
    <message>
        <source>Kettlebell carry</source>
        <translation>Paseo con kettlebells</translation>
    </message>
    <message>
        <source>Kettlebell deadlift</source>
        <translation>Peso muerto con kettlebell</translation>
    </message>
    <message>
        <source>Kettlebell floor press</source>
        <translation>Press en el suelo con kettlebell</translation>
    </message>
    <message>
        <source>Kettlebell front squat</source>
        <translation>Sentadilla frontal con kettlebells</translation>
    </message>
    <message>
        <source>Kettlebell get-up</source>
        <translation>Levantada con kettlebell</translation>
    </message>
    <message>
        <source>Kettlebell goblet squat</source>
        <translation>Sentadilla goblet con kettlebell</translation>
    </message>
    <message>
        <source>Kettlebell lunge</source>
        <translation>Zancada con kettlebell</translation>
    </message>
    <message>
        <source>Kettlebell row</source>
        <translation>Remo con kettlebell</translation>
    </message>
    <message>
        <source>Kettlebell swing</source>
        <translation>Swing con kettlebell</translation>
    </message>
    <message>
        <source>Kneeling hamstring lowering</source>
        <translation>Curl nórdico</translation>
    </message>
    <message>
        <source>L-sit</source>
        <translation>L-sit</translation>
    </message>
    <message>
        <source>Lateral raise</source>
        <translation>Elevación lateral</translation>
    </message>
    <message>
        <source>Leg curl</source>
        <translation>Curl femoral</translation>
    </message>
    <message>
        <source>Leg extension</source>
        <translation>Extensión de piernas</translation>
    </message>
    <message>
        <source>Leg press</source>
        <translation>Prensa de piernas</translation>
    </message>
    <message>
        <source>Lying body lever</source>
        <translation>Palanca tumbada</translation>
    </message>
    <message>
        <source>Lying triceps extension</source>
        <translation>Press francés</translation>
    </message>
    <message>
        <source>Machine chest press</source>
        <translation>Press de pecho en máquina</translation>
    </message>
    <message>
        <source>Machine shoulder press</source>
        <translation>Press de hombros en máquina</translation>
    </message>
    <message>
        <source>Machine squat</source>
        <translation>Sentadilla en máquina</translation>
    </message>
    <message>
        <source>Muscle-up</source>
        <translation>Muscle-up</translation>
    </message>
    <message>
        <source>One-arm dumbbell row</source>
        <translation>Remo a una mano con mancuerna</translation>
    </message>
    <message>
        <source>One-arm kettlebell press</source>
        <translation>Press a una mano con kettlebell</translation>
    </message>
    <message>
        <source>Overhead carry</source>
        <translation>Paseo con carga en alto</translation>
    </message>
    <message>
        <source>Overhead press</source>
        <translation>Press militar</translation>
    </message>
    <message>
        <source>Overhead triceps extension</source>
        <translation>Extensión de tríceps en alto</translation>
    </message>
    <message>
        <source>Planche</source>
        <translation>Planche</translation>
    </message>
    <message>
        <source>Plank</source>
        <translation>Plancha</translation>
    </message>
    <message>
        <source>Pull-up</source>
        <translation>Dominada</translation>
    </message>
    <message>
        <source>Pulldown</source>
        <translation>Jalón al pecho</translation>
    </message>
    <message>
        <source>Push press</source>
        <translation>Press con impulso</translation>
    </message>
    <message>
        <source>Push-up</source>
        <translation>Flexión</translation>
    </message>
    <message>
        <source>Push-up on straps</source>
        <translation>Flexión en correas</translation>
    </message>
    <message>
        <source>Reverse plank</source>
        <translation>Plancha inversa</translation>
    </message>
    <message>
        <source>Rollout</source>
        <translation>Rueda abdominal</translation>
    </message>
    <message>
        <source>Romanian deadlift</source>
        <translation>Peso muerto rumano</translation>
    </message>
    <message>
        <source>Row on straps</source>
        <translation>Remo en correas</translation>
    </message>
    <message>
        <source>Row under a bar</source>
        <translation>Remo invertido en barra</translation>
    </message>
    <message>
        <source>Seated cable row</source>
        <translation>Remo sentado en polea</translation>
    </message>
    <message>
        <source>Seated calf raise</source>
        <translation>Elevación de talones sentado</translation>
    </message>
    <message>
        <source>Seated dumbbell press</source>
        <translation>Press sentado con mancuernas</translation>
    </message>
    <message>
        <source>Seated twist</source>
        <translation>Giro de tronco sentado</translation>
    </message>
    <message>
        <source>Side bend</source>
        <translation>Flexión lateral de tronco</translation>
    </message>
    <message>
        <source>Side lunge</source>
        <translation>Zancada lateral</translation>
    </message>
    <message>
        <source>Side plank</source>
        <translation>Plancha lateral</translation>
    </message>
    <message>
        <source>Single-leg Romanian deadlift</source>
        <translation>Peso muerto rumano a una pierna</translation>
    </message>
    <message>
        <source>Single-leg press</source>
        <translation>Prensa a una pierna</translation>
    </message>
    <message>
        <source>Sliding leg curl</source>
        <translation>Curl femoral deslizante</translation>
    </message>
    <message>
        <source>Split squat</source>
        <translation>Sentadilla dividida</translation>
    </message>
    <message>
        <source>Standing machine calf raise</source>
        <translation>Elevación de talones en máquina</translation>
    </message>
    <message>
        <source>Step-up</source>
        <translation>Subida al cajón</translation>
    </message>
    <message>
        <source>Straight-arm pulldown</source>
        <translation>Jalón con brazos rectos</translation>
    </message>
    <message>
        <source>Suitcase carry</source>
        <translation>Paseo de maleta</translation>
    </message>
    <message>
        <source>Triceps extension on straps</source>
        <translation>Extensión de tríceps en correas</translation>
    </message>
    <message>
        <source>Triceps pushdown</source>
        <translation>Extensión de tríceps en polea</translation>
    </message>
    <message>
        <source>Walking lunge</source>
        <translation>Zancada caminando</translation>
    </message>
    <message>
        <source>Wall sit</source>
        <translation>Sentadilla en pared</translation>
    </message>
    <message>
        <source>Wide-stance deadlift</source>
        <translation>Peso muerto sumo</translation>
    </message>
    <message>
        <source>Wrist curl</source>
        <translation>Curl de muñeca</translation>
    </message>
</context>
<context>
    <name>ExerciseVariations</name>
    <message>
        <source>all the way up, arms crossed</source>
        <translation>arriba del todo, brazos cruzados</translation>
    </message>
    <message>
        <source>arms beside the ears</source>
        <translation>brazos junto a las orejas</translation>
    </message>
    <message>
        <source>arms crossed</source>
        <translation>brazos cruzados</translation>
    </message>
    <message>
        <source>at the wall</source>
        <translation>en la pared</translation>
    </message>
    <message>
        <source>at the wall, hands raised for depth</source>
        <translation>en la pared, manos elevadas para más recorrido</translation>
    </message>
    <message>
        <source>at the wall, lowering only</source>
        <translation>en la pared, solo bajar</translation>
    </message>
    <message>
        <source>back flat, hips at a right angle</source>
        <translation>espalda plana, cadera en ángulo recto</translation>
    </message>
    <message>
        <source>back leg free</source>
        <translation>pierna de atrás libre</translation>
    </message>
    <message>
        <source>back leg free, arms beside the ears</source>
        <translation>pierna de atrás libre, brazos junto a las orejas</translation>
    </message>
    <message>
        <source>back to the wall, heels leaving it</source>
        <translation>espalda a la pared, los talones la dejan</translation>
    </message>
    <message>
        <source>back toe touching the floor</source>
        <translation>la punta de atrás toca el suelo</translation>
    </message>
    <message>
        <source>backward</source>
        <translation>hacia atrás</translation>
    </message>
    <message>
        <source>body 15° from upright</source>
        <translation>cuerpo a 15° de la vertical</translation>
    </message>
    <message>
        <source>body 30° from upright</source>
        <translation>cuerpo a 30° de la vertical</translation>
    </message>
    <message>
        <source>body 45° from upright</source>
        <translation>cuerpo a 45° de la vertical</translation>
    </message>
    <message>
        <source>body 60° from upright</source>
        <translation>cuerpo a 60° de la vertical</translation>
    </message>
    <message>
        <source>body 75° from upright</source>
        <translation>cuerpo a 75° de la vertical</translation>
    </message>
    <message>
        <source>body half way</source>
        <translation>cuerpo a medio camino</translation>
    </message>
    <message>
        <source>body level</source>
        <translation>cuerpo horizontal</translation>
    </message>
    <message>
        <source>body level, arms spread wide</source>
        <translation>cuerpo horizontal, brazos muy abiertos</translation>
    </message>
    <message>
        <source>body level, one arm</source>
        <translation>cuerpo horizontal, un brazo</translation>
    </message>
    <message>
        <source>body near level</source>
        <translation>cuerpo casi horizontal</translation>
    </message>
    <message>
        <source>body near upright</source>
        <translation>cuerpo casi vertical</translation>
    </message>
    <message>
        <source>both feet on a box</source>
        <translation>ambos pies en un cajón</translation>
    </message>
    <message>
        <source>both feet on the floor</source>
        <translation>ambos pies en el suelo</translation>
    </message>
    <message>
        <source>both hands on towels</source>
        <translation>ambas manos en toallas</translation>
    </message>
    <message>
        <source>both hands, passive</source>
        <translation>ambas manos, pasivo</translation>
    </message>
    <message>
        <source>both hands, shoulder blades down</source>
        <translation>ambas manos, escápulas abajo</translation>
    </message>
    <message>
        <source>both knees to hip height</source>
        <translation>ambas rodillas a la cadera</translation>
    </message>
    <message>
        <source>both knees to the chest</source>
        <translation>ambas rodillas al pecho</translation>
    </message>
    <message>
        <source>both legs straight and level</source>
        <translation>ambas piernas rectas y horizontales</translation>
    </message>
    <message>
        <source>both legs, heels off a step</source>
        <translation>ambas piernas, talones fuera del escalón</translation>
    </message>
    <message>
        <source>both legs, on the floor</source>
        <translation>ambas piernas, en el suelo</translation>
    </message>
    <message>
        <source>chest and legs up, arms at the ears</source>
        <translation>pecho y piernas arriba, brazos junto a las orejas</translation>
    </message>
    <message>
        <source>chest and legs up, arms by the sides</source>
        <translation>pecho y piernas arriba, brazos a los lados</translation>
    </message>
    <message>
        <source>chest to the bar</source>
        <translation>pecho a la barra</translation>
    </message>
    <message>
        <source>chest to the wall</source>
        <translation>pecho a la pared</translation>
    </message>
    <message>
        <source>chest to the wall, toes leaving it</source>
        <translation>pecho a la pared, las puntas la dejan</translation>
    </message>
    <message>
        <source>chest up, feet down</source>
        <translation>pecho arriba, pies abajo</translation>
    </message>
    <message>
        <source>chin-up from long arms</source>
        <translation>dominada supina desde brazos largos</translation>
    </message>
    <message>
        <source>dip between bars</source>
        <translation>fondo en paralelas</translation>
    </message>
    <message>
        <source>dip on rings</source>
        <translation>fondo en anillas</translation>
    </message>
    <message>
        <source>down and up with a light push of the hands</source>
        <translation>bajar y subir con un leve empuje de manos</translation>
    </message>
    <message>
        <source>down and up without hands</source>
        <translation>bajar y subir sin manos</translation>
    </message>
    <message>
        <source>elbows in front of the eyes</source>
        <translation>codos por delante de los ojos</translation>
    </message>
    <message>
        <source>feet higher than the shoulders</source>
        <translation>pies más altos que los hombros</translation>
    </message>
    <message>
        <source>feet on a box</source>
        <translation>pies en un cajón</translation>
    </message>
    <message>
        <source>feet on a box take some weight</source>
        <translation>pies en un cajón con parte del peso</translation>
    </message>
    <message>
        <source>feet on a box, body level</source>
        <translation>pies en un cajón, cuerpo horizontal</translation>
    </message>
    <message>
        <source>feet on top of each other</source>
        <translation>un pie sobre otro</translation>
    </message>
    <message>
        <source>feet one before the other</source>
        <translation>un pie delante del otro</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>hacia delante</translation>
    </message>
    <message>
        <source>free standing</source>
        <translation>sin apoyo</translation>
    </message>
    <message>
        <source>from the feet</source>
        <translation>desde los pies</translation>
    </message>
    <message>
        <source>from the feet, up to a wall</source>
        <translation>desde los pies, hasta una pared</translation>
    </message>
    <message>
        <source>from the knees</source>
        <translation>desde las rodillas</translation>
    </message>
    <message>
        <source>from the knees, up to a wall</source>
        <translation>desde las rodillas, hasta una pared</translation>
    </message>
    <message>
        <source>hand on a support</source>
        <translation>mano en un apoyo</translation>
    </message>
    <message>
        <source>hands and feet on the floor</source>
        <translation>manos y pies en el suelo</translation>
    </message>
    <message>
        <source>hands on a bench, 43 cm</source>
        <translation>manos en un banco, 43 cm</translation>
    </message>
    <message>
        <source>hands on a wall</source>
        <translation>manos en una pared</translation>
    </message>
    <message>
        <source>hands slide up the thighs</source>
        <translation>las manos suben por los muslos</translation>
    </message>
    <message>
        <source>heels on a box</source>
        <translation>talones en un cajón</translation>
    </message>
    <message>
        <source>heels tap the floor, knees bent</source>
        <translation>toques de talón, rodillas dobladas</translation>
    </message>
    <message>
        <source>hips above the knees</source>
        <translation>cadera por encima de las rodillas</translation>
    </message>
    <message>
        <source>hips bent, hands ready</source>
        <translation>cadera doblada, manos listas</translation>
    </message>
    <message>
        <source>hips high, feet on a box</source>
        <translation>cadera alta, pies en un cajón</translation>
    </message>
    <message>
        <source>hips high, feet on the floor</source>
        <translation>cadera alta, pies en el suelo</translation>
    </message>
    <message>
        <source>hips lifted, feet on the floor</source>
        <translation>cadera arriba, pies en el suelo</translation>
    </message>
    <message>
        <source>hips on a bench, arms beside the ears</source>
        <translation>cadera en un banco, brazos junto a las orejas</translation>
    </message>
    <message>
        <source>hips on a bench, knees bent</source>
        <translation>cadera en un banco, rodillas dobladas</translation>
    </message>
    <message>
        <source>hips on a bench, legs held</source>
        <translation>cadera en un banco, piernas sujetas</translation>
    </message>
    <message>
        <source>hips on a bench, one leg held</source>
        <translation>cadera en un banco, una pierna sujeta</translation>
    </message>
    <message>
        <source>hips over hands, feet on a box</source>
        <translation>cadera sobre las manos, pies en un cajón</translation>
    </message>
    <message>
        <source>hips straight, knees bent</source>
        <translation>cadera recta, rodillas dobladas</translation>
    </message>
    <message>
        <source>hold at the top, then lower</source>
        <translation>aguantar arriba, luego bajar</translation>
    </message>
    <message>
        <source>knees bent, arms forward</source>
        <translation>rodillas dobladas, brazos al frente</translation>
    </message>
    <message>
        <source>knees bent, feet near</source>
        <translation>rodillas dobladas, pies cerca</translation>
    </message>
    <message>
        <source>knees bent, like a table</source>
        <translation>rodillas dobladas, como una mesa</translation>
    </message>
    <message>
        <source>knees off the floor, holding still</source>
        <translation>rodillas en el aire, sin moverse</translation>
    </message>
    <message>
        <source>knees to the chest</source>
        <translation>rodillas al pecho</translation>
    </message>
    <message>
        <source>leaning forward, toes on the floor</source>
        <translation>inclinación adelante, puntas en el suelo</translation>
    </message>
    <message>
        <source>leg only</source>
        <translation>solo la pierna</translation>
    </message>
    <message>
        <source>legs apart, straight</source>
        <translation>piernas abiertas y rectas</translation>
    </message>
    <message>
        <source>legs straight and together</source>
        <translation>piernas rectas y juntas</translation>
    </message>
    <message>
        <source>legs straight and wide apart</source>
        <translation>piernas rectas y muy abiertas</translation>
    </message>
    <message>
        <source>legs straight, above level</source>
        <translation>piernas rectas, por encima de la horizontal</translation>
    </message>
    <message>
        <source>legs straight, arms at the ears</source>
        <translation>piernas rectas, brazos junto a las orejas</translation>
    </message>
    <message>
        <source>legs straight, arms forward</source>
        <translation>piernas rectas, brazos al frente</translation>
    </message>
    <message>
        <source>legs straight, heels on the floor</source>
        <translation>piernas rectas, talones en el suelo</translation>
    </message>
    <message>
        <source>legs straight, on the elbows</source>
        <translation>piernas rectas, sobre los codos</translation>
    </message>
    <message>
        <source>legs straight, on the hands</source>
        <translation>piernas rectas, sobre las manos</translation>
    </message>
    <message>
        <source>legs straight, one leg raised</source>
        <translation>piernas rectas, una levantada</translation>
    </message>
    <message>
        <source>lower foot never rests</source>
        <translation>el pie de abajo nunca descansa</translation>
    </message>
    <message>
        <source>lower foot on its heel, no push</source>
        <translation>pie de abajo sobre el talón, sin empujar</translation>
    </message>
    <message>
        <source>lowering only, on a bar</source>
        <translation>solo bajar, en barra</translation>
    </message>
    <message>
        <source>lowering only, step back up</source>
        <translation>solo bajar, subir con un paso</translation>
    </message>
    <message>
        <source>lying on the floor, chest up</source>
        <translation>tumbado en el suelo, pecho arriba</translation>
    </message>
    <message>
        <source>no push, three seconds down</source>
        <translation>sin empujar, tres segundos al bajar</translation>
    </message>
    <message>
        <source>on a bar</source>
        <translation>en barra</translation>
    </message>
    <message>
        <source>on forearms and toes</source>
        <translation>antebrazos y puntas de los pies</translation>
    </message>
    <message>
        <source>on one arm</source>
        <translation>a un brazo</translation>
    </message>
    <message>
        <source>on rings</source>
        <translation>en anillas</translation>
    </message>
    <message>
        <source>on the knees</source>
        <translation>de rodillas</translation>
    </message>
    <message>
        <source>on the knees, hands on a box</source>
        <translation>de rodillas, manos en un cajón</translation>
    </message>
    <message>
        <source>one arm</source>
        <translation>un brazo</translation>
    </message>
    <message>
        <source>one arm to the side</source>
        <translation>un brazo al lado</translation>
    </message>
    <message>
        <source>one arm, other hand on a strap</source>
        <translation>un brazo, la otra mano en una correa</translation>
    </message>
    <message>
        <source>one foot off the floor</source>
        <translation>un pie en el aire</translation>
    </message>
    <message>
        <source>one hand</source>
        <translation>una mano</translation>
    </message>
    <message>
        <source>one hand on a towel over the bar</source>
        <translation>una mano en una toalla sobre la barra</translation>
    </message>
    <message>
        <source>one knee at a time</source>
        <translation>una rodilla cada vez</translation>
    </message>
    <message>
        <source>one leg goes long</source>
        <translation>una pierna se alarga</translation>
    </message>
    <message>
        <source>one leg straight</source>
        <translation>una pierna recta</translation>
    </message>
    <message>
        <source>one leg straight, arms forward</source>
        <translation>una pierna recta, brazos al frente</translation>
    </message>
    <message>
        <source>one leg straight, the other tucked</source>
        <translation>una pierna recta, la otra recogida</translation>
    </message>
    <message>
        <source>one leg, foot on the floor</source>
        <translation>una pierna, pie en el suelo</translation>
    </message>
    <message>
        <source>one leg, heel off a step</source>
        <translation>una pierna, talón fuera del escalón</translation>
    </message>
    <message>
        <source>one leg, on the floor</source>
        <translation>una pierna, en el suelo</translation>
    </message>
    <message>
        <source>one leg, shoulders on a bench</source>
        <translation>una pierna, hombros en un banco</translation>
    </message>
    <message>
        <source>opposite arm and leg</source>
        <translation>brazo y pierna contrarios</translation>
    </message>
    <message>
        <source>opposite arm and leg from a plank</source>
        <translation>brazo y pierna contrarios desde la plancha</translation>
    </message>
    <message>
        <source>opposite arm and leg go long</source>
        <translation>se alargan brazo y pierna contrarios</translation>
    </message>
    <message>
        <source>opposite arm and leg, five seconds each</source>
        <translation>brazo y pierna contrarios, cinco segundos cada uno</translation>
    </message>
    <message>
        <source>out and back on both legs</source>
        <translation>ida y vuelta con ambas piernas</translation>
    </message>
    <message>
        <source>out and back on one leg</source>
        <translation>ida y vuelta con una pierna</translation>
    </message>
    <message>
        <source>out on one leg, back on both</source>
        <translation>ida con una pierna, vuelta con ambas</translation>
    </message>
    <message>
        <source>pull-up from long arms</source>
        <translation>dominada desde brazos largos</translation>
    </message>
    <message>
        <source>rear foot on a box</source>
        <translation>pie de atrás en un cajón</translation>
    </message>
    <message>
        <source>shoulders on a bench</source>
        <translation>hombros en un banco</translation>
    </message>
    <message>
        <source>sideways</source>
        <translation>de lado</translation>
    </message>
    <message>
        <source>single-leg squat to a box</source>
        <translation>sentadilla a una pierna al cajón</translation>
    </message>
    <message>
        <source>single-leg squat, full depth</source>
        <translation>sentadilla a una pierna, completa</translation>
    </message>
    <message>
        <source>single-leg squat, hand on a support</source>
        <translation>sentadilla a una pierna, mano en un apoyo</translation>
    </message>
    <message>
        <source>slide out only, hips down to return</source>
        <translation>solo deslizar, bajar la cadera para volver</translation>
    </message>
    <message>
        <source>squat on both legs</source>
        <translation>sentadilla con ambas piernas</translation>
    </message>
    <message>
        <source>squat to a box</source>
        <translation>sentadilla al cajón</translation>
    </message>
    <message>
        <source>staggered squat, most weight on one leg</source>
        <translation>sentadilla escalonada, casi todo el peso en una pierna</translation>
    </message>
    <message>
        <source>step back</source>
        <translation>paso atrás</translation>
    </message>
    <message>
        <source>step back from a step</source>
        <translation>paso atrás desde un escalón</translation>
    </message>
    <message>
        <source>step back, hand on a support</source>
        <translation>paso atrás, mano en un apoyo</translation>
    </message>
    <message>
        <source>step forward</source>
        <translation>paso adelante</translation>
    </message>
    <message>
        <source>straight body, all the way down, push back up</source>
        <translation>cuerpo recto, bajar del todo, subir empujando</translation>
    </message>
    <message>
        <source>straight body, down and up</source>
        <translation>cuerpo recto, bajar y subir</translation>
    </message>
    <message>
        <source>straight body, half way down</source>
        <translation>cuerpo recto, bajar a medias</translation>
    </message>
    <message>
        <source>straight body, lowering only</source>
        <translation>cuerpo recto, solo bajar</translation>
    </message>
    <message>
        <source>straight legs to level</source>
        <translation>piernas rectas a la horizontal</translation>
    </message>
    <message>
        <source>straight legs to the bar</source>
        <translation>piernas rectas a la barra</translation>
    </message>
    <message>
        <source>thighs level</source>
        <translation>muslos horizontales</translation>
    </message>
    <message>
        <source>thighs level, knees bent</source>
        <translation>muslos horizontales, rodillas dobladas</translation>
    </message>
    <message>
        <source>thighs level, on the toes</source>
        <translation>muslos horizontales, de puntillas</translation>
    </message>
    <message>
        <source>thighs level, one foot off the floor</source>
        <translation>muslos horizontales, un pie en el aire</translation>
    </message>
    <message>
        <source>top leg raised</source>
        <translation>pierna de arriba levantada</translation>
    </message>
    <message>
        <source>up on both legs, down on one</source>
        <translation>subir con ambas, bajar con una</translation>
    </message>
    <message>
        <source>walking</source>
        <translation>caminando</translation>
    </message>
    <message>
        <source>with a jump, on a low bar</source>
        <translation>con salto, en barra baja</translation>
    </message>
    <message>
        <source>with a push of the lower foot</source>
        <translation>con empuje del pie de abajo</translation>
    </message>
</context>
<context>
    <name>Exercises</name>
    <message>
        <source>band</source>
        <translation>banda</translation>
    </message>
    <message>
        <source>bar at {where}</source>
        <translation>barra a {where}</translation>
    </message>
    <message>
        <source>barbell</source>
        <translation>barra</translation>
    </message>
    <message>
        <source>biceps</source>
        <translation>bíceps</translation>
    </message>
    <message>
        <source>bodyweight</source>
        <translation>peso corporal</translation>
    </message>
    <message>
        <source>calves</source>
        <translation>pantorrillas</translation>
    </message>
    <message>
        <source>carry</source>
        <translation>transporte</translation>
    </message>
    <message>
        <source>chest</source>
        <translation>pecho</translation>
    </message>
    <message>
        <source>dumbbell</source>
        <translation>mancuerna</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>feet on {where}</source>
        <translation>pies en {where}</translation>
    </message>
    <message>
        <source>forearms</source>
        <translation>antebrazos</translation>
    </message>
    <message>
        <source>glutes</source>
        <translation>glúteos</translation>
    </message>
    <message>
        <source>hamstrings</source>
        <translation>femorales</translation>
    </message>
    <message>
        <source>hands on {where}</source>
        <translation>manos en {where}</translation>
    </message>
    <message>
        <source>hinge</source>
        <translation>bisagra</translation>
    </message>
    <message>
        <source>horizontal pull</source>
        <translation>tracción horizontal</translation>
    </message>
    <message>
        <source>horizontal push</source>
        <translation>empuje horizontal</translation>
    </message>
    <message>
        <source>kettlebell</source>
        <translation>kettlebell</translation>
    </message>
    <message>
        <source>lats</source>
        <translation>dorsales</translation>
    </message>
    <message>
        <source>lower back</source>
        <translation>lumbares</translation>
    </message>
    <message>
        <source>lunge</source>
        <translation>zancada</translation>
    </message>
    <message>
        <source>machine</source>
        <translation>máquina</translation>
    </message>
    <message>
        <source>quadriceps</source>
        <translation>cuádriceps</translation>
    </message>
    <message>
        <source>shoulders</source>
        <translation>hombros</translation>
    </message>
    <message>
        <source>single joint</source>
        <translation>monoarticular</translation>
    </message>
    <message>
        <source>squat</source>
        <translation>sentadilla</translation>
    </message>
    <message>
        <source>triceps</source>
        <translation>tríceps</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation>tronco</translation>
    </message>
    <message>
        <source>under {where}</source>
        <translation>bajo {where}</translation>
    </message>
    <message>
        <source>upper back</source>
        <translation>espalda alta</translation>
    </message>
    <message>
        <source>vertical pull</source>
        <translation>tracción vertical</translation>
    </message>
    <message>
        <source>vertical push</source>
        <translation>empuje vertical</translation>
    </message>
</context>
<context>
    <name>ExportMenu</name>
    <message>
        <source>&amp;Everything, for another computer…</source>
        <translation>T&amp;odo, para otro ordenador…</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>&amp;Exportar</translation>
    </message>
    <message>
        <source>All of {name}, {sessions}, saved to {path}</source>
        <translation>Todo lo de {name}, {sessions}, guardado en {path}</translation>
    </message>
    <message>
        <source>Cancelled: no file was written.</source>
        <translation>Cancelado: no se escribió ningún archivo.</translation>
    </message>
    <message>
        <source>Choose a trainee first.</source>
        <translation>Elegir antes un atleta.</translation>
    </message>
    <message>
        <source>Everything</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>For {name}: all that is kept…</source>
        <translation>Para {name}: todo lo guardado…</translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation>Nada aún</translation>
    </message>
    <message>
        <source>Program {name}…</source>
        <translation>Programa {name}…</translation>
    </message>
    <message>
        <source>Training log of {name}</source>
        <translation>Registro de {name}</translation>
    </message>
    <message>
        <source>Training log of {name}…</source>
        <translation>Registro de {name}…</translation>
    </message>
    <message>
        <source>Training logs</source>
        <translation>Registros de entrenamiento</translation>
    </message>
    <message>
        <source>Training logs of &amp;all…</source>
        <translation>Registros de &amp;todos…</translation>
    </message>
    <message>
        <source>Where to put all that is kept of {name}</source>
        <translation>Dónde poner todo lo guardado de {name}</translation>
    </message>
    <message>
        <source>Writing everything…</source>
        <translation>Escribiendo todo…</translation>
    </message>
    <message>
        <source>{count} lines saved to {path}</source>
        <translation>{count} filas guardadas en {path}</translation>
    </message>
    <message>
        <source>{name} saved to {path}</source>
        <translation>{name} guardado en {path}</translation>
    </message>
    <message>
        <source>{path} cannot be written: {why}</source>
        <translation>No se puede escribir {path}: {why}</translation>
    </message>
    <message>
        <source>{trainees} and {sessions} saved to {path}</source>
        <translation>{trainees} y {sessions} guardados en {path}</translation>
    </message>
</context>
<context>
    <name>FloorsRow</name>
    <message>
        <source>Another floor for single variations</source>
        <translation>Otro mínimo para algunas variaciones</translation>
    </message>
    <message>
        <source>Begins at</source>
        <translation>Empieza en</translation>
    </message>
    <message>
        <source>Floor at {name}</source>
        <translation>Mínimo en {name}</translation>
    </message>
</context>
<context>
    <name>GeneralCaution</name>
    <message>
        <source>Chest pain, fainting, sudden severe pain or numbness: stop and seek medical help.</source>
        <translation>Dolor de pecho, desmayo, dolor fuerte y repentino o entumecimiento: parar y buscar atención médica.</translation>
    </message>
    <message>
        <source>Training can hurt. Targets are for healthy people; those with a condition, pregnancy, recent injury or surgery, or a yes in a health screening need clearance from a licensed professional. Local rules and licensed practice come first.</source>
        <translation>Entrenar puede causar lesiones. Los objetivos son para personas sanas; con una enfermedad, embarazo, lesión o cirugía reciente, o un sí en el cuestionario de salud, hace falta la autorización de un profesional de la salud habilitado. Las normas locales y el criterio profesional van primero.</translation>
    </message>
</context>
<context>
    <name>GoalBlock</name>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Goals</source>
        <translation>Metas</translation>
    </message>
    <message>
        <source>None set. A goal is drawn into the chart of its exercise, and the trend says when it comes.</source>
        <translation>Ninguna fijada. Una meta se dibuja en el gráfico de su ejercicio, y la tendencia dice cuándo llega.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
</context>
<context>
    <name>GoalForm</name>
    <message>
        <source>Another exercise, a few letters of its name</source>
        <translation>Otro ejercicio, unas letras de su nombre</translation>
    </message>
    <message>
        <source>Change the goal</source>
        <translation>Cambiar la meta</translation>
    </message>
    <message>
        <source>Day of the goal; empty: open</source>
        <translation>Día de la meta; vacío: abierto</translation>
    </message>
    <message>
        <source>Exercise of the goal</source>
        <translation>Ejercicio de la meta</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Load of the goal</source>
        <translation>Carga de la meta</translation>
    </message>
    <message>
        <source>Needed: 1 to {most} repetitions.</source>
        <translation>Falta: de 1 a {most} repeticiones.</translation>
    </message>
    <message>
        <source>Needed: 1 to {most} seconds.</source>
        <translation>Falta: de 1 a {most} segundos.</translation>
    </message>
    <message>
        <source>Needed: a load above 0.</source>
        <translation>Falta: una carga mayor que 0.</translation>
    </message>
    <message>
        <source>Needed: a variation.</source>
        <translation>Falta: una variación.</translation>
    </message>
    <message>
        <source>Needed: the exercise. Type a few letters, Return takes.</source>
        <translation>Falta: el ejercicio. Escribir unas letras, Intro acepta.</translation>
    </message>
    <message>
        <source>Note on the goal</source>
        <translation>Nota sobre la meta</translation>
    </message>
    <message>
        <source>Repetitions of the goal</source>
        <translation>Repeticiones de la meta</translation>
    </message>
    <message>
        <source>Seconds of the goal</source>
        <translation>Segundos de la meta</translation>
    </message>
    <message>
        <source>Set the goal</source>
        <translation>Fijar la meta</translation>
    </message>
    <message>
        <source>This day is over: from {today} on, or leave it empty.</source>
        <translation>Este día ya pasó: desde el {today}, o dejarlo vacío.</translation>
    </message>
    <message>
        <source>Variation of the goal</source>
        <translation>Variación de la meta</translation>
    </message>
    <message>
        <source>What the goal is measured in</source>
        <translation>En qué se mide la meta</translation>
    </message>
    <message>
        <source>a few letters</source>
        <translation>unas letras</translation>
    </message>
    <message>
        <source>another exercise…</source>
        <translation>otro ejercicio…</translation>
    </message>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>by (empty: open)</source>
        <translation>para el (vacío: abierto)</translation>
    </message>
    <message>
        <source>exercise</source>
        <translation>ejercicio</translation>
    </message>
    <message>
        <source>for reps (empty: 1)</source>
        <translation>en reps (vacío: 1)</translation>
    </message>
    <message>
        <source>load {unit}</source>
        <translation>carga {unit}</translation>
    </message>
    <message>
        <source>measured in</source>
        <translation>se mide en</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>reps</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>segundos</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>variación</translation>
    </message>
    <message>
        <source>which one</source>
        <translation>cuál</translation>
    </message>
</context>
<context>
    <name>GoalHere</name>
    <message>
        <source>A further goal</source>
        <translation>Otra meta</translation>
    </message>
    <message>
        <source>Goal of {line}</source>
        <translation>Meta de {line}</translation>
    </message>
    <message>
        <source>Goal…</source>
        <translation>Meta…</translation>
    </message>
    <message>
        <source>Remove the goal</source>
        <translation>Quitar la meta</translation>
    </message>
</context>
<context>
    <name>Goals</name>
    <message>
        <source>Best so far {amount}, on {day}.</source>
        <translation>Lo mejor hasta ahora: {amount}, el {day}.</translation>
    </message>
    <message>
        <source>No estimate of the maximum: too many repetitions, or no body mass.</source>
        <translation>Sin máximo estimado: demasiadas repeticiones, o sin masa corporal.</translation>
    </message>
    <message>
        <source>No forecast yet: four sessions over two weeks make a trend.</source>
        <translation>Aún sin previsión: cuatro sesiones en dos semanas dan una tendencia.</translation>
    </message>
    <message>
        <source>Nothing on record yet.</source>
        <translation>Aún no hay nada registrado.</translation>
    </message>
    <message>
        <source>Reached on {day}.</source>
        <translation>Alcanzada el {day}.</translation>
    </message>
    <message>
        <source>Remove the goal {goal}</source>
        <translation>Quitar la meta {goal}</translation>
    </message>
    <message>
        <source>That is an estimated maximum of {load}.</source>
        <translation>Eso es un máximo estimado de {load}.</translation>
    </message>
    <message>
        <source>added load</source>
        <translation>lastre</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>repetitions</source>
        <translation>repeticiones</translation>
    </message>
    <message>
        <source>seconds held</source>
        <translation>segundos aguantados</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>variación</translation>
    </message>
    <message>
        <source>{line}: {goal}</source>
        <translation>{line}: {goal}</translation>
    </message>
    <message>
        <source>{line}: {goal} by {day}</source>
        <translation>{line}: {goal} para el {day}</translation>
    </message>
</context>
<context>
    <name>Guide</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Guía</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Página</translation>
    </message>
    <message>
        <source>Pages of the guide</source>
        <translation>Páginas de la guía</translation>
    </message>
</context>
<context>
    <name>HealthFields</name>
    <message>
        <source>Answers</source>
        <translation>Respuestas</translation>
    </message>
    <message>
        <source>Clearance</source>
        <translation>Autorización</translation>
    </message>
    <message>
        <source>Clearance by</source>
        <translation>Autorización de</translation>
    </message>
    <message>
        <source>Consent on</source>
        <translation>Consentimiento el</translation>
    </message>
    <message>
        <source>Health screening on</source>
        <translation>Cuestionario el</translation>
    </message>
    <message>
        <source>Other activities</source>
        <translation>Otras actividades</translation>
    </message>
    <message>
        <source>a yes: needs clearance</source>
        <translation>un sí: autorización</translation>
    </message>
    <message>
        <source>all recorded here</source>
        <translation>anotadas aquí</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>licensed professional</source>
        <translation>profesional de la salud</translation>
    </message>
    <message>
        <source>no to every question</source>
        <translation>todo no</translation>
    </message>
    <message>
        <source>not asked yet</source>
        <translation>sin preguntar aún</translation>
    </message>
    <message>
        <source>what was said</source>
        <translation>qué dijo</translation>
    </message>
</context>
<context>
    <name>Import</name>
    <message>
        <source>1 session</source>
        <translation>1 sesión</translation>
    </message>
    <message>
        <source>Brings {what}.</source>
        <translation>Aporta {what}.</translation>
    </message>
    <message>
        <source>Brought {what}.</source>
        <translation>Aportó {what}.</translation>
    </message>
    <message>
        <source>Nothing in it can be taken in yet.</source>
        <translation>Aún no se puede incorporar nada de él.</translation>
    </message>
    <message>
        <source>RPE of the set</source>
        <translation>RPE de la serie</translation>
    </message>
    <message>
        <source>Take in {sets}</source>
        <translation>Incorporar {sets}</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Incorporar</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>una tabla</translation>
    </message>
    <message>
        <source>a training log</source>
        <translation>un registro de entrenamiento</translation>
    </message>
    <message>
        <source>a workbook</source>
        <translation>un libro de cálculo</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>masa corporal</translation>
    </message>
    <message>
        <source>body mass {mass}</source>
        <translation>masa corporal {mass}</translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>dudosa</translation>
    </message>
    <message>
        <source>effort of the session</source>
        <translation>esfuerzo de la sesión</translation>
    </message>
    <message>
        <source>exercise</source>
        <translation>ejercicio</translation>
    </message>
    <message>
        <source>goals: {count}</source>
        <translation>metas: {count}</translation>
    </message>
    <message>
        <source>good</source>
        <translation>bien</translation>
    </message>
    <message>
        <source>held back</source>
        <translation>retenida</translation>
    </message>
    <message>
        <source>how many sets</source>
        <translation>cuántas series</translation>
    </message>
    <message>
        <source>is there</source>
        <translation>ya está</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitida</translation>
    </message>
    <message>
        <source>lines of exercises: {count}</source>
        <translation>líneas de ejercicios: {count}</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>minutos</translation>
    </message>
    <message>
        <source>name of the line</source>
        <translation>nombre de la línea</translation>
    </message>
    <message>
        <source>new exercises: {names}</source>
        <translation>ejercicios nuevos: {names}</translation>
    </message>
    <message>
        <source>new on the roster: {names}</source>
        <translation>nuevos en la lista: {names}</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>sin leer</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>note on the session</source>
        <translation>nota de la sesión</translation>
    </message>
    <message>
        <source>number of the set</source>
        <translation>número de la serie</translation>
    </message>
    <message>
        <source>pain, 0-10</source>
        <translation>dolor, 0-10</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>inválida</translation>
    </message>
    <message>
        <source>reps in reserve</source>
        <translation>reps en reserva</translation>
    </message>
    <message>
        <source>reps, or 3x5</source>
        <translation>reps, o 3x5</translation>
    </message>
    <message>
        <source>seconds held</source>
        <translation>segundos aguantados</translation>
    </message>
    <message>
        <source>side</source>
        <translation>lado</translation>
    </message>
    <message>
        <source>tempo</source>
        <translation>tempo</translation>
    </message>
    <message>
        <source>trainee</source>
        <translation>atleta</translation>
    </message>
    <message>
        <source>unit of the load</source>
        <translation>unidad de la carga</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>variación</translation>
    </message>
    <message>
        <source>warm-up, yes or no</source>
        <translation>calentamiento, sí o no</translation>
    </message>
    <message>
        <source>{count} body masses</source>
        <translation>{count} masas corporales</translation>
    </message>
    <message>
        <source>{count} lines are there already.</source>
        <translation>{count} filas ya están.</translation>
    </message>
    <message>
        <source>{count} other activities</source>
        <translation>{count} actividades más</translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation>{count} sesiones</translation>
    </message>
    <message>
        <source>{kind}, {lines} lines, {columns} columns</source>
        <translation>{kind}, {lines} filas, {columns} columnas</translation>
    </message>
    <message>
        <source>{sets} in {sessions}</source>
        <translation>{sets} en {sessions}</translation>
    </message>
    <message>
        <source>{weeks}, {phases} phases, {exercises} exercises</source>
        <translation>{weeks}, {phases} fases, {exercises} ejercicios</translation>
    </message>
    <message>
        <source>{work} at {load}</source>
        <translation>{work} con {load}</translation>
    </message>
</context>
<context>
    <name>ImportArea</name>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>All lines, doubtful ones, refused ones</source>
        <translation>Todas las filas, las dudosas, las inválidas</translation>
    </message>
    <message>
        <source>All of it is in.</source>
        <translation>Todo está dentro.</translation>
    </message>
    <message>
        <source>Another file</source>
        <translation>Otro archivo</translation>
    </message>
    <message>
        <source>Cancelled: nothing was taken in.</source>
        <translation>Cancelado: no se incorporó nada.</translation>
    </message>
    <message>
        <source>Choose a file to bring in</source>
        <translation>Elegir un archivo para importar</translation>
    </message>
    <message>
        <source>Save the lines that are not taken</source>
        <translation>Guardar las filas que no se toman</translation>
    </message>
    <message>
        <source>Tables, programs, trainees (*.csv *.tsv *.txt *.xlsx *.xlsm *.json)</source>
        <translation>Tablas, programas, atletas (*.csv *.tsv *.txt *.xlsx *.xlsm *.json)</translation>
    </message>
    <message>
        <source>Take doubtful lines too</source>
        <translation>Tomar también las filas dudosas</translation>
    </message>
    <message>
        <source>Take in {file}</source>
        <translation>Incorporar {file}</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Incorporar</translation>
    </message>
    <message>
        <source>Take the nearest name for all</source>
        <translation>Tomar el nombre más cercano para todos</translation>
    </message>
    <message>
        <source>Taking it in…</source>
        <translation>Incorporando…</translation>
    </message>
    <message>
        <source>What is {name}?</source>
        <translation>¿Qué es {name}?</translation>
    </message>
    <message>
        <source>before it is taken in</source>
        <translation>antes de incorporarlo</translation>
    </message>
    <message>
        <source>{count} lines saved to {path}, each with the reason.</source>
        <translation>{count} filas guardadas en {path}, cada una con su motivo.</translation>
    </message>
    <message>
        <source>{count} lines were not taken. Save them as a file, mend them there, and bring that file in.</source>
        <translation>{count} filas no se tomaron. Guardarlas en un archivo, arreglarlas allí e importar ese archivo.</translation>
    </message>
    <message>
        <source>{file} is taken in</source>
        <translation>{file} está incorporado</translation>
    </message>
    <message>
        <source>{file} is taken in. Undo takes all of it out again.</source>
        <translation>{file} está incorporado. Deshacer lo saca todo de nuevo.</translation>
    </message>
    <message>
        <source>{name} is loaded like</source>
        <translation>{name} se carga como</translation>
    </message>
    <message>
        <source>{name} not taken.csv</source>
        <translation>{name} sin tomar.csv</translation>
    </message>
</context>
<context>
    <name>ImportDone</name>
    <message>
        <source>Another file…</source>
        <translation>Otro archivo…</translation>
    </message>
    <message>
        <source>Save the lines that were not taken…</source>
        <translation>Guardar las filas no tomadas…</translation>
    </message>
    <message>
        <source>To the desk</source>
        <translation>Al escritorio</translation>
    </message>
</context>
<context>
    <name>ImportOptions</name>
    <message>
        <source>All lines are of</source>
        <translation>Todas las filas son de</translation>
    </message>
    <message>
        <source>Blank date or exercise</source>
        <translation>Fecha o ejercicio en blanco</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Fechas</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Signo decimal</translation>
    </message>
    <message>
        <source>Keep this mapping as</source>
        <translation>Guardar esta plantilla como</translation>
    </message>
    <message>
        <source>Loads without a unit</source>
        <translation>Cargas sin unidad</translation>
    </message>
    <message>
        <source>Mapping</source>
        <translation>Plantilla</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Hoja de cálculo</translation>
    </message>
    <message>
        <source>as guessed</source>
        <translation>según se adivina</translation>
    </message>
    <message>
        <source>as the line above</source>
        <translation>como la fila anterior</translation>
    </message>
    <message>
        <source>as written</source>
        <translation>como está escrito</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>day first</source>
        <translation>día primero</translation>
    </message>
    <message>
        <source>either</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>kg or lb?</source>
        <translation>¿kg o lb?</translation>
    </message>
    <message>
        <source>month first</source>
        <translation>mes primero</translation>
    </message>
    <message>
        <source>not kept</source>
        <translation>sin guardar</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>inválida</translation>
    </message>
    <message>
        <source>who?</source>
        <translation>¿quién?</translation>
    </message>
</context>
<context>
    <name>ImportPage</name>
    <message>
        <source>? Doubtful {count}</source>
        <translation>? Dudosas {count}</translation>
    </message>
    <message>
        <source>A few letters of its name</source>
        <translation>Unas letras de su nombre</translation>
    </message>
    <message>
        <source>All {count}</source>
        <translation>Todas {count}</translation>
    </message>
    <message>
        <source>Another file…</source>
        <translation>Otro archivo…</translation>
    </message>
    <message>
        <source>Hand back {count}…</source>
        <translation>Devolver {count}…</translation>
    </message>
    <message>
        <source>How far the reading is</source>
        <translation>Hasta dónde va la lectura</translation>
    </message>
    <message>
        <source>Line {number}, {fate}: {text}</source>
        <translation>Fila {number}, {fate}: {text}</translation>
    </message>
    <message>
        <source>Lines shown</source>
        <translation>Filas mostradas</translation>
    </message>
    <message>
        <source>No line is like that.</source>
        <translation>Ninguna fila es así.</translation>
    </message>
    <message>
        <source>Save the lines that are not taken as a file</source>
        <translation>Guardar en un archivo las filas que no se toman</translation>
    </message>
    <message>
        <source>Stop reading</source>
        <translation>Parar la lectura</translation>
    </message>
    <message>
        <source>Take doubtful lines too</source>
        <translation>Tomar también las filas dudosas</translation>
    </message>
    <message>
        <source>× Refused {count}</source>
        <translation>× Inválidas {count}</translation>
    </message>
</context>
<context>
    <name>ImportTable</name>
    <message>
        <source>Lines of the file</source>
        <translation>Filas del archivo</translation>
    </message>
</context>
<context>
    <name>ImportWelcome</name>
    <message>
        <source>A file dropped on the window opens here too. Nothing is saved until you say so, and one step of Undo takes all of it out again.</source>
        <translation>Un archivo soltado sobre la ventana también se abre aquí. No se guarda nada hasta confirmarlo, y un solo Deshacer lo saca todo de nuevo.</translation>
    </message>
    <message>
        <source>A training log, a program, trainees</source>
        <translation>Un registro de entrenamiento, un programa, atletas</translation>
    </message>
    <message>
        <source>Any table of training</source>
        <translation>Cualquier tabla de entrenamiento</translation>
    </message>
    <message>
        <source>Bring in what was written elsewhere</source>
        <translation>Importar lo escrito en otro lugar</translation>
    </message>
    <message>
        <source>CSV, or a workbook (.xlsx). You see what each column was taken for, change it, and read every line before anything is taken in. Sets may stand one in a line, side by side, or together in a cell: 3x5, 5/5/4, BW+10.</source>
        <translation>CSV o libro de cálculo (.xlsx). Se ve qué se entendió de cada columna, se puede cambiar, y se lee cada fila antes de incorporar nada. Las series pueden ir una por fila, una junto a otra o juntas en una celda: 3x5, 5/5/4, BW+10.</translation>
    </message>
    <message>
        <source>Choose a file…</source>
        <translation>Elegir un archivo…</translation>
    </message>
    <message>
        <source>Drop it anywhere</source>
        <translation>Soltarlo en cualquier sitio</translation>
    </message>
    <message>
        <source>Files that this program wrote are known at once. A log brings nothing twice, so a longer one can follow.</source>
        <translation>Los archivos que escribió este programa se reconocen al momento. Un registro no trae nada dos veces, así que después puede venir uno más largo.</translation>
    </message>
    <message>
        <source>Mappings kept: {names}. They are offered for files with the same heading.</source>
        <translation>Plantillas guardadas: {names}. Se ofrecen para archivos con el mismo encabezado.</translation>
    </message>
</context>
<context>
    <name>KeyboardMap</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
</context>
<context>
    <name>Limits</name>
    <message>
        <source>A red flag was noted on {day}: stop, seek medical help, and ask for nothing until a licensed professional&apos;s clearance is recorded.</source>
        <translation>Se anotó una señal de alarma el {day}: parar, buscar atención médica y no pedir nada hasta registrar la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>Born in {birth_year} and perhaps under 18: 1-3 sets of 6-15, on 2-3 days that do not follow each other, form before load, no maximum tests, and supervised.</source>
        <translation>Año de nacimiento {birth_year}, quizá menor de 18: 1-3 series de 6-15, en 2-3 días no seguidos, técnica antes que carga, sin pruebas de máximo y con supervisión.</translation>
    </message>
    <message>
        <source>Born in {birth_year}, so 65 or older: 1-3 sets of 8-12 at 60-80 % of the maximum, on 2-3 days that do not follow each other, and balance work on 3 days a week.</source>
        <translation>Año de nacimiento {birth_year}, así que 65 años o más: 1-3 series de 8-12 al 60-80 % del máximo, en 2-3 días no seguidos, y trabajo de equilibrio 3 días por semana.</translation>
    </message>
    <message>
        <source>Hard sessions of the pattern {pattern} on {first} and {second} leave no full day between them.</source>
        <translation>Las sesiones duras del patrón {pattern} el {first} y el {second} no dejan un día entero en medio.</translation>
    </message>
    <message>
        <source>More than one thing grows at once: {variables}.</source>
        <translation>Crece más de una cosa a la vez: {variables}.</translation>
    </message>
    <message>
        <source>No health screening is recorded: ask the health questions before the first session.</source>
        <translation>No hay ningún cuestionario de salud registrado: hacer las preguntas de salud antes de la primera sesión.</translation>
    </message>
    <message>
        <source>Not trained for {days} days, since {last}: start with what was done last, or less.</source>
        <translation>Sin entrenar desde hace {days} días, desde el {last}: empezar con lo último que se hizo, o menos.</translation>
    </message>
    <message>
        <source>Other activities are not recorded, so the training load shown is incomplete.</source>
        <translation>No se registran otras actividades, así que la carga de entrenamiento mostrada está incompleta.</translation>
    </message>
    <message>
        <source>Pain of {pain} out of 10 was noted on {day} (sessions with pain in a row: {times}): nothing is asked until you choose a lighter load, a substitute or a licensed professional&apos;s clearance.</source>
        <translation>Se anotó dolor {pain} de 10 el {day} (sesiones seguidas con dolor: {times}): no se pide nada hasta elegir una carga menor, un sustituto o la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>Pain of {pain} out of 10 was noted on {day}: nothing grows until a session without it.</source>
        <translation>Se anotó dolor {pain} de 10 el {day}: nada crece hasta una sesión sin dolor.</translation>
    </message>
    <message>
        <source>Several signs at once speak for a deload: {signals}.</source>
        <translation>Varias señales a la vez aconsejan una descarga: {signals}.</translation>
    </message>
    <message>
        <source>The days of the week to {week_ends} were nearly alike (monotony {monotony}): let hard and easy days differ.</source>
        <translation>Los días de la semana hasta el {week_ends} fueron casi iguales (monotonía {monotony}): alternar días duros y fáciles.</translation>
    </message>
    <message>
        <source>The health screening of {day} was not clear: nothing is asked until a licensed professional&apos;s clearance is recorded with name and date.</source>
        <translation>El cuestionario de salud del {day} no quedó limpio: no se pide nada hasta registrar la autorización de un profesional de la salud habilitado, con nombre y fecha.</translation>
    </message>
    <message>
        <source>The load rises from {before_g} to {after_g} at once, {over} more.</source>
        <translation>La carga sube de {before_g} a {after_g} de una vez, un {over} más.</translation>
    </message>
    <message>
        <source>The next step that the equipment allows is {over} harder: {reps_needed} repetitions first.</source>
        <translation>El paso siguiente que permite el equipo es un {over} más duro: antes, {reps_needed} repeticiones.</translation>
    </message>
    <message>
        <source>The rule is complete: add a variable or raise a ceiling, or the same is asked again and again.</source>
        <translation>La regla está completa: añadir una variable o subir un tope, o se pedirá lo mismo una y otra vez.</translation>
    </message>
    <message>
        <source>There has been no deload for {weeks} weeks, since {since}.</source>
        <translation>No ha habido descarga desde hace {weeks} semanas, desde el {since}.</translation>
    </message>
    <message>
        <source>This has probably stopped growing ({probability} likely): change a variable or plan a deload.</source>
        <translation>Probablemente ha dejado de crecer ({probability}): cambiar una variable o planear una descarga.</translation>
    </message>
    <message>
        <source>Trained less than twice a week: {muscles}.</source>
        <translation>Se entrena menos de dos veces por semana: {muscles}.</translation>
    </message>
</context>
<context>
    <name>LineChoice</name>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
</context>
<context>
    <name>LineModel</name>
    <message>
        <source>Is</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>Leído como</translation>
    </message>
</context>
<context>
    <name>LinePlot</name>
    <message>
        <source>body mass {mass} {unit}</source>
        <translation>masa corporal {mass} {unit}</translation>
    </message>
    <message>
        <source>goal {what}</source>
        <translation>meta {what}</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
</context>
<context>
    <name>Load</name>
    <message>
        <source>Away the whole week.</source>
        <translation>Ausencia toda la semana.</translation>
    </message>
    <message>
        <source>Effort of each session or activity (0-10) times its minutes, summed.</source>
        <translation>Esfuerzo de cada sesión o actividad (0-10) por sus minutos, todo sumado.</translation>
    </message>
    <message>
        <source>Exponentially weighted averages of the daily load: the short one above the long one says that the load rises.</source>
        <translation>Medias de la carga diaria con peso exponencial: la corta por encima de la larga dice que la carga sube.</translation>
    </message>
    <message>
        <source>Hard sets</source>
        <translation>Series duras</translation>
    </message>
    <message>
        <source>Incomplete: not every activity of {name} is recorded.</source>
        <translation>Incompleta: no se registran todas las actividades de {name}.</translation>
    </message>
    <message>
        <source>Incomplete: one session has no effort or no minutes.</source>
        <translation>Incompleta: una sesión no tiene esfuerzo o minutos.</translation>
    </message>
    <message>
        <source>Incomplete: {count} sessions have no effort or no minutes.</source>
        <translation>Incompleta: {count} sesiones no tienen esfuerzo o minutos.</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Load, monotony and strain: Foster 1998, Med Sci Sports Exerc 30(7):1164-1168; days without an entry count 0; which standard deviation is meant is not said there. Averages over 7 and 28 days, exponentially weighted: Williams 2017, Br J Sports Med 51(3):209-210, DOI 10.1136/bjsports-2016-096589. No ratio of the two is shown: as a sign of injury risk it is criticised (Impellizzeri 2021, Sports Med, DOI 10.1007/s40279-020-01378-6).</source>
        <translation>Carga, monotonía y tensión: Foster 1998, Med Sci Sports Exerc 30(7):1164-1168; los días sin entrada cuentan 0; allí no se dice qué desviación típica se usa. Medias de 7 y 28 días, con peso exponencial: Williams 2017, Br J Sports Med 51(3):209-210, DOI 10.1136/bjsports-2016-096589. No se muestra el cociente de ambas: como signo de riesgo de lesión está criticado (Impellizzeri 2021, Sports Med, DOI 10.1007/s40279-020-01378-6).</translation>
    </message>
    <message>
        <source>Marks of hard sets a week by muscle, as information, not an order:</source>
        <translation>Referencias de series duras por semana y músculo, como información, no como orden:</translation>
    </message>
    <message>
        <source>Monotony</source>
        <translation>Monotonía</translation>
    </message>
    <message>
        <source>Nothing is recorded this week yet.</source>
        <translation>Aún no hay nada registrado esta semana.</translation>
    </message>
    <message>
        <source>Nothing was recorded in this week.</source>
        <translation>No se registró nada en esta semana.</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sesiones</translation>
    </message>
    <message>
        <source>Sessions done, of the training days that the program names.</source>
        <translation>Sesiones hechas, de los días de entrenamiento que tiene el programa.</translation>
    </message>
    <message>
        <source>Strain</source>
        <translation>Tensión</translation>
    </message>
    <message>
        <source>The load so far is {load}.</source>
        <translation>La carga hasta ahora es {load}.</translation>
    </message>
    <message>
        <source>The load so far is {load}; the weeks before had {usual} on average.</source>
        <translation>La carga hasta ahora es {load}; las semanas anteriores tuvieron {usual} de media.</translation>
    </message>
    <message>
        <source>The mean of the seven daily loads over {deviation}: the more alike the days, the higher.</source>
        <translation>La media de las siete cargas diarias entre {deviation}: cuanto más parecidos los días, más alta.</translation>
    </message>
    <message>
        <source>The week&apos;s load times its monotony.</source>
        <translation>La carga de la semana por su monotonía.</translation>
    </message>
    <message>
        <source>The week&apos;s load was {load}, as in the weeks before.</source>
        <translation>La carga de la semana fue {load}, como en las semanas anteriores.</translation>
    </message>
    <message>
        <source>The week&apos;s load was {load}, {by} less than the weeks before ({usual}).</source>
        <translation>La carga de la semana fue {load}, {by} menos que en las semanas anteriores ({usual}).</translation>
    </message>
    <message>
        <source>The week&apos;s load was {load}, {by} more than the weeks before ({usual}).</source>
        <translation>La carga de la semana fue {load}, {by} más que en las semanas anteriores ({usual}).</translation>
    </message>
    <message>
        <source>The week&apos;s load was {load}.</source>
        <translation>La carga de la semana fue {load}.</translation>
    </message>
    <message>
        <source>This week</source>
        <translation>Esta semana</translation>
    </message>
    <message>
        <source>Trend</source>
        <translation>Tendencia</translation>
    </message>
    <message>
        <source>Week from {day}</source>
        <translation>Semana del {day}</translation>
    </message>
    <message>
        <source>Wellness, 1 bad to 5 good: {told}</source>
        <translation>Bienestar, 1 malo a 5 bueno: {told}</translation>
    </message>
    <message>
        <source>Working sets done, of those asked or planned.</source>
        <translation>Series de trabajo hechas, de las pedidas o planeadas.</translation>
    </message>
    <message>
        <source>a day, over 7 / over 28 days</source>
        <translation>al día, en 7 / en 28 días</translation>
    </message>
    <message>
        <source>a session without effort or minutes</source>
        <translation>una sesión sin esfuerzo o minutos</translation>
    </message>
    <message>
        <source>at least {load}</source>
        <translation>al menos {load}</translation>
    </message>
    <message>
        <source>away</source>
        <translation>ausencia</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>descarga</translation>
    </message>
    <message>
        <source>done of planned</source>
        <translation>hechas de planeadas</translation>
    </message>
    <message>
        <source>effort × minutes, added up</source>
        <translation>esfuerzo × minutos, sumados</translation>
    </message>
    <message>
        <source>in part</source>
        <translation>en parte</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>load × monotony</source>
        <translation>carga × monotonía</translation>
    </message>
    <message>
        <source>mean of the days over their deviation</source>
        <translation>media de los días entre su desviación</translation>
    </message>
    <message>
        <source>monotony</source>
        <translation>monotonía</translation>
    </message>
    <message>
        <source>motivation</source>
        <translation>motivación</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>sessions</source>
        <translation>sesiones</translation>
    </message>
    <message>
        <source>sleep</source>
        <translation>sueño</translation>
    </message>
    <message>
        <source>soreness</source>
        <translation>molestias</translation>
    </message>
    <message>
        <source>strain</source>
        <translation>tensión</translation>
    </message>
    <message>
        <source>stress</source>
        <translation>estrés</translation>
    </message>
    <message>
        <source>the population&apos;s standard deviation</source>
        <translation>la desviación típica de la población</translation>
    </message>
    <message>
        <source>the sample&apos;s standard deviation</source>
        <translation>la desviación típica de la muestra</translation>
    </message>
    <message>
        <source>{count} earlier</source>
        <translation>{count} antes</translation>
    </message>
    <message>
        <source>{done} of {planned}</source>
        <translation>{done} de {planned}</translation>
    </message>
    <message>
        <source>{load} in other activities</source>
        <translation>{load} en otras actividades</translation>
    </message>
    <message>
        <source>{load} in sessions</source>
        <translation>{load} en sesiones</translation>
    </message>
    <message>
        <source>{name} on {day}</source>
        <translation>{name} el {day}</translation>
    </message>
</context>
<context>
    <name>LoadArea</name>
    <message>
        <source>A week earlier</source>
        <translation>Una semana antes</translation>
    </message>
    <message>
        <source>A week earlier or later</source>
        <translation>Una semana antes o después</translation>
    </message>
    <message>
        <source>A week later</source>
        <translation>Una semana después</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Avisos</translation>
    </message>
    <message>
        <source>Deload</source>
        <translation>Descarga</translation>
    </message>
    <message>
        <source>Plan it</source>
        <translation>Planearla</translation>
    </message>
    <message>
        <source>The deload earlier or later</source>
        <translation>La descarga antes o después</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Semana</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Qué se muestra</translation>
    </message>
</context>
<context>
    <name>LoadSteps</name>
    <message>
        <source>A heavier load</source>
        <translation>Una carga mayor</translation>
    </message>
    <message>
        <source>A lighter load</source>
        <translation>Una carga menor</translation>
    </message>
</context>
<context>
    <name>LoadWeek</name>
    <message>
        <source>All activities of {name} are recorded here</source>
        <translation>Todas las actividades de {name} se registran aquí</translation>
    </message>
    <message>
        <source>Choose a program</source>
        <translation>Elegir un programa</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Effort (0-10) times minutes of each session and of every other activity makes the training load. A week of it shows whether days differ; four weeks show what is usual.</source>
        <translation>El esfuerzo (0-10) por los minutos de cada sesión y de cada otra actividad da la carga de entrenamiento. Una semana muestra si los días difieren; cuatro muestran lo habitual.</translation>
    </message>
    <message>
        <source>Hard sets by muscle</source>
        <translation>Series duras por músculo</translation>
    </message>
    <message>
        <source>Load by day</source>
        <translation>Carga por día</translation>
    </message>
    <message>
        <source>Load of {name}</source>
        <translation>Carga de {name}</translation>
    </message>
    <message>
        <source>Numbers…</source>
        <translation>Números…</translation>
    </message>
    <message>
        <source>Other activities</source>
        <translation>Otras actividades</translation>
    </message>
    <message>
        <source>Recorded on {day}, which is not among these weeks</source>
        <translation>Registrada el {day}, que no está entre estas semanas</translation>
    </message>
    <message>
        <source>Remove {activity}</source>
        <translation>Quitar {activity}</translation>
    </message>
    <message>
        <source>Sixteen weeks</source>
        <translation>Dieciséis semanas</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Fuentes</translation>
    </message>
    <message>
        <source>Type the first session</source>
        <translation>Escribir la primera sesión</translation>
    </message>
    <message>
        <source>Weeks and muscles</source>
        <translation>Semanas y músculos</translation>
    </message>
    <message>
        <source>What is recorded of {name}</source>
        <translation>Lo que se registra de {name}</translation>
    </message>
    <message>
        <source>average over 7 days</source>
        <translation>media de 7 días</translation>
    </message>
    <message>
        <source>dotted: published marks</source>
        <translation>punteado: referencias publicadas</translation>
    </message>
    <message>
        <source>load by day; hard sets by muscle</source>
        <translation>carga por día; series duras por músculo</translation>
    </message>
    <message>
        <source>of this week; they count as load</source>
        <translation>de esta semana; cuentan como carga</translation>
    </message>
    <message>
        <source>other activities</source>
        <translation>otras actividades</translation>
    </message>
    <message>
        <source>over 28 days</source>
        <translation>de 28 días</translation>
    </message>
    <message>
        <source>sessions</source>
        <translation>sesiones</translation>
    </message>
    <message>
        <source>{name} needs a program first.</source>
        <translation>{name} necesita antes un programa.</translation>
    </message>
</context>
<context>
    <name>LoadWeeks</name>
    <message>
        <source>Left and right choose a week.</source>
        <translation>Izquierda y derecha eligen una semana.</translation>
    </message>
    <message>
        <source>{week}. {sentence} {figures}</source>
        <translation>{week}. {sentence} {figures}</translation>
    </message>
</context>
<context>
    <name>LockPanel</name>
    <message>
        <source>Go on</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Bloqueado</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>That is not the passphrase.</source>
        <translation>Esa no es la contraseña.</translation>
    </message>
    <message>
        <source>The window is only hidden: the data file has no passphrase, so anybody can go on.</source>
        <translation>La ventana solo está oculta: el archivo de datos no tiene contraseña, así que cualquiera puede continuar.</translation>
    </message>
    <message>
        <source>Type the passphrase to go on.</source>
        <translation>Escribir la contraseña para continuar.</translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>Choose a trainee first.</source>
        <translation>Elegir antes un atleta.</translation>
    </message>
    <message>
        <source>Here is what was being typed when the program ended.</source>
        <translation>Aquí está lo que se escribía cuando el programa terminó.</translation>
    </message>
    <message>
        <source>On this screen</source>
        <translation>En esta pantalla</translation>
    </message>
    <message>
        <source>Rungwise</source>
        <translation>Rungwise</translation>
    </message>
</context>
<context>
    <name>MarkedPanel</name>
    <message>
        <source>1 slot marked</source>
        <translation>1 puesto marcado</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
    <message>
        <source>In reserve</source>
        <translation>En reserva</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Reserve of all marked</source>
        <translation>Reserva de todos los marcados</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Descanso</translation>
    </message>
    <message>
        <source>Rest of all marked</source>
        <translation>Descanso de todos los marcados</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Series</translation>
    </message>
    <message>
        <source>Sets of all marked</source>
        <translation>Series de todos los marcados</translation>
    </message>
    <message>
        <source>Unmark</source>
        <translation>Desmarcar</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>reserva</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>descanso</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>series</translation>
    </message>
    <message>
        <source>{count} slots marked</source>
        <translation>{count} puestos marcados</translation>
    </message>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
</context>
<context>
    <name>Marks</name>
    <message>
        <source>size, the highest band studied</source>
        <translation>hipertrofia, la franja más alta estudiada</translation>
    </message>
    <message>
        <source>strength and size, at least</source>
        <translation>fuerza e hipertrofia, como mínimo</translation>
    </message>
</context>
<context>
    <name>MassFields</name>
    <message>
        <source>Body mass {unit}</source>
        <translation>Masa corporal {unit}</translation>
    </message>
    <message>
        <source>On</source>
        <translation>El</translation>
    </message>
    <message>
        <source>none entered yet</source>
        <translation>ninguna aún</translation>
    </message>
</context>
<context>
    <name>Menus</name>
    <message>
        <source>&amp;Add…</source>
        <translation>Aña&amp;dir…</translation>
    </message>
    <message>
        <source>&amp;Back up now</source>
        <translation>&amp;Copia de seguridad ahora</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>Co&amp;lores</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>&amp;Find…</source>
        <translation>&amp;Buscar…</translation>
    </message>
    <message>
        <source>&amp;Guide</source>
        <translation>&amp;Guía</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Importar…</translation>
    </message>
    <message>
        <source>&amp;Keyboard map</source>
        <translation>&amp;Mapa de teclado</translation>
    </message>
    <message>
        <source>&amp;Larger text</source>
        <translation>Texto más &amp;grande</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Claro</translation>
    </message>
    <message>
        <source>&amp;Lock</source>
        <translation>B&amp;loquear</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Siguiente</translation>
    </message>
    <message>
        <source>&amp;Open data file…</source>
        <translation>A&amp;brir archivo de datos…</translation>
    </message>
    <message>
        <source>&amp;Passphrase…</source>
        <translation>C&amp;ontraseña…</translation>
    </message>
    <message>
        <source>&amp;Previous</source>
        <translation>&amp;Anterior</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;Take over everything…</source>
        <translation>T&amp;raspasar todo…</translation>
    </message>
    <message>
        <source>&amp;Trainee</source>
        <translation>A&amp;tleta</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Usual text</source>
        <translation>Te&amp;xto normal</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>After {count} minutes</source>
        <translation>Tras {count} minutos</translation>
    </message>
    <message>
        <source>Alt and the letter</source>
        <translation>Alt y la letra</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Como el &amp;sistema</translation>
    </message>
    <message>
        <source>Bac&amp;kups…</source>
        <translation>Copias de se&amp;guridad…</translation>
    </message>
    <message>
        <source>E&amp;rase for good…</source>
        <translation>Bo&amp;rrar para siempre…</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>En todas partes</translation>
    </message>
    <message>
        <source>Gi&amp;ve them their data…</source>
        <translation>Dar&amp;le sus datos…</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>Idio&amp;ma</translation>
    </message>
    <message>
        <source>Lock &amp;when idle</source>
        <translation>Bloquear sin ac&amp;tividad</translation>
    </message>
    <message>
        <source>Menus</source>
        <translation>Menús</translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Nunca</translation>
    </message>
    <message>
        <source>Next field</source>
        <translation>Campo siguiente</translation>
    </message>
    <message>
        <source>Next part of the screen</source>
        <translation>Parte siguiente de la pantalla</translation>
    </message>
    <message>
        <source>Note &amp;days away…</source>
        <translation>A&amp;notar ausencia…</translation>
    </message>
    <message>
        <source>Open the &amp;demo scenario</source>
        <translation>Abrir el caso de &amp;demostración</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>&amp;Texto más pequeño</translation>
    </message>
    <message>
        <source>Set a &amp;goal…</source>
        <translation>Fi&amp;jar una meta…</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
</context>
<context>
    <name>MoreDaysBlock</name>
    <message>
        <source>Train it on {weekday} too</source>
        <translation>Entrenarlo también el {weekday}</translation>
    </message>
    <message>
        <source>{names} train by this program too: it changes for all of them.</source>
        <translation>{names} también entrenan con este programa: cambia para todos.</translation>
    </message>
    <message>
        <source>{names} trains by this program too: it changes for both.</source>
        <translation>{names} también entrena con este programa: cambia para ambos.</translation>
    </message>
</context>
<context>
    <name>MuscleBars</name>
    <message>
        <source>Hard sets a week: {sets}</source>
        <translation>Series duras por semana: {sets}</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>under {count}</source>
        <translation>menos de {count}</translation>
    </message>
    <message>
        <source>{done} of {planned}</source>
        <translation>{done} de {planned}</translation>
    </message>
</context>
<context>
    <name>NameHeader</name>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
</context>
<context>
    <name>NameQuestions</name>
    <message>
        <source>1 name is not known here. Its lines wait until you say what it means.</source>
        <translation>1 nombre desconocido. Sus filas esperan a que se aclare.</translation>
    </message>
    <message>
        <source>All of them are told. They are kept with the mapping.</source>
        <translation>Ya están todos aclarados. Se guardan con la plantilla.</translation>
    </message>
    <message>
        <source>Names</source>
        <translation>Nombres</translation>
    </message>
    <message>
        <source>Nearest for all</source>
        <translation>Los más cercanos</translation>
    </message>
    <message>
        <source>{count} names are not known here. Their lines wait until you say what they mean.</source>
        <translation>{count} nombres desconocidos. Sus filas esperan a que se aclaren.</translation>
    </message>
</context>
<context>
    <name>NextTime</name>
    <message>
        <source>Next time</source>
        <translation>Próxima vez</translation>
    </message>
    <message>
        <source>No exercise was recorded.</source>
        <translation>No se registró ningún ejercicio.</translation>
    </message>
</context>
<context>
    <name>NoProgress</name>
    <message>
        <source>Choose a program</source>
        <translation>Elegir un programa</translation>
    </message>
    <message>
        <source>Every session typed becomes a point. Four of them, two weeks apart or more, make a trend: how much a week, how sure that is, and when a goal comes.</source>
        <translation>Cada sesión escrita es un punto. Cuatro de ellas, en dos semanas o más, dan una tendencia: cuánto por semana, con qué seguridad y cuándo llega una meta.</translation>
    </message>
    <message>
        <source>Nothing to show of {name} yet</source>
        <translation>Aún no hay nada que mostrar de {name}</translation>
    </message>
    <message>
        <source>Type the first session</source>
        <translation>Escribir la primera sesión</translation>
    </message>
    <message>
        <source>{name} needs a program first.</source>
        <translation>{name} necesita antes un programa.</translation>
    </message>
</context>
<context>
    <name>NoSheet</name>
    <message>
        <source>Next day of training: {day}</source>
        <translation>Próximo día de entrenamiento: {day}</translation>
    </message>
    <message>
        <source>No sheet for this day</source>
        <translation>No hay hoja para este día</translation>
    </message>
    <message>
        <source>Open the program</source>
        <translation>Abrir el programa</translation>
    </message>
</context>
<context>
    <name>Notes</name>
    <message>
        <source>1 question is open.</source>
        <translation>Hay 1 pregunta pendiente.</translation>
    </message>
    <message>
        <source>Exercises that wait for an answer are left out: {count}.</source>
        <translation>Ejercicios omitidos a la espera de respuesta: {count}.</translation>
    </message>
    <message>
        <source>How many were left in reserve: “{said}”?</source>
        <translation>¿Cuántas quedaron en reserva: «{said}»?</translation>
    </message>
    <message>
        <source>How many, or how long: “{said}”?</source>
        <translation>¿Cuántas, o cuánto tiempo: «{said}»?</translation>
    </message>
    <message>
        <source>How was it set up: “{said}”?</source>
        <translation>¿Cómo estaba montado: «{said}»?</translation>
    </message>
    <message>
        <source>In which unit is “{said}”?</source>
        <translation>¿En qué unidad está «{said}»?</translation>
    </message>
    <message>
        <source>Is the comma in “{said}” a decimal mark?</source>
        <translation>¿La coma de «{said}» es un signo decimal?</translation>
    </message>
    <message>
        <source>Is “{said}” a load or an effort?</source>
        <translation>¿«{said}» es una carga o un esfuerzo?</translation>
    </message>
    <message>
        <source>On record already: {count}.</source>
        <translation>Ya en el registro: {count}.</translation>
    </message>
    <message>
        <source>Parts not read: {count}.</source>
        <translation>Partes sin leer: {count}.</translation>
    </message>
    <message>
        <source>Save {count} sessions</source>
        <translation>Guardar {count} sesiones</translation>
    </message>
    <message>
        <source>Say it in the text at the left, or leave it out.</source>
        <translation>Decirlo en el texto de la izquierda, u omitirlo.</translation>
    </message>
    <message>
        <source>Take over</source>
        <translation>Incorporar</translation>
    </message>
    <message>
        <source>Two sets, or left and right: “{said}”?</source>
        <translation>¿Dos series, o izquierda y derecha: «{said}»?</translation>
    </message>
    <message>
        <source>What do the numbers mean in “{said}”?</source>
        <translation>¿Qué significan los números de «{said}»?</translation>
    </message>
    <message>
        <source>What does “{said}” belong to?</source>
        <translation>¿A qué pertenece «{said}»?</translation>
    </message>
    <message>
        <source>What is meant again by “{said}”?</source>
        <translation>¿Qué se repite con «{said}»?</translation>
    </message>
    <message>
        <source>Where was the pain: “{said}”?</source>
        <translation>¿Dónde estaba el dolor: «{said}»?</translation>
    </message>
    <message>
        <source>Which day is “{said}”?</source>
        <translation>¿Qué día es «{said}»?</translation>
    </message>
    <message>
        <source>Which exercise is “{said}”?</source>
        <translation>¿Qué ejercicio es «{said}»?</translation>
    </message>
    <message>
        <source>Which exercise?</source>
        <translation>¿Qué ejercicio?</translation>
    </message>
    <message>
        <source>Which line of it is meant by “{said}”?</source>
        <translation>¿A qué línea se refiere «{said}»?</translation>
    </message>
    <message>
        <source>Which number is which in “{said}”?</source>
        <translation>¿Qué número es qué en «{said}»?</translation>
    </message>
    <message>
        <source>Which number of “{said}” was done?</source>
        <translation>¿Qué número de «{said}» se hizo?</translation>
    </message>
    <message>
        <source>With which load: “{said}”?</source>
        <translation>¿Con qué carga: «{said}»?</translation>
    </message>
    <message>
        <source>Write the load into the text, or leave it out.</source>
        <translation>Escribir la carga en el texto, u omitirlo.</translation>
    </message>
    <message>
        <source>another exercise…</source>
        <translation>otro ejercicio…</translation>
    </message>
    <message>
        <source>as it was read</source>
        <translation>como se leyó</translation>
    </message>
    <message>
        <source>bar at {height}</source>
        <translation>barra a {height}</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>dudoso</translation>
    </message>
    <message>
        <source>feet on {height}</source>
        <translation>pies en {height}</translation>
    </message>
    <message>
        <source>hands on {height}</source>
        <translation>manos en {height}</translation>
    </message>
    <message>
        <source>kept as a note</source>
        <translation>guardado como nota</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>omitirlo</translation>
    </message>
    <message>
        <source>none of them</source>
        <translation>ninguno de ellos</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>sin leer</translation>
    </message>
    <message>
        <source>read as a mark</source>
        <translation>leído como marca</translation>
    </message>
    <message>
        <source>read as an exercise</source>
        <translation>leído como ejercicio</translation>
    </message>
    <message>
        <source>read as the day</source>
        <translation>leído como día</translation>
    </message>
    <message>
        <source>read as what was done</source>
        <translation>leído como trabajo hecho</translation>
    </message>
    <message>
        <source>the line without a name</source>
        <translation>la línea sin nombre</translation>
    </message>
    <message>
        <source>warm-up {work}</source>
        <translation>calentamiento {work}</translation>
    </message>
    <message>
        <source>{count} in reserve</source>
        <translation>{count} en reserva</translation>
    </message>
    <message>
        <source>{count} left</source>
        <translation>{count} izq.</translation>
    </message>
    <message>
        <source>{count} questions are open.</source>
        <translation>Hay {count} preguntas pendientes.</translation>
    </message>
    <message>
        <source>{count} right</source>
        <translation>{count} der.</translation>
    </message>
    <message>
        <source>{sets} on {days}.</source>
        <translation>{sets}: {days}.</translation>
    </message>
    <message>
        <source>{work} at ?</source>
        <translation>{work} con ?</translation>
    </message>
    <message>
        <source>{work} at {load}</source>
        <translation>{work} con {load}</translation>
    </message>
</context>
<context>
    <name>NotesArea</name>
    <message>
        <source>A few letters of its name</source>
        <translation>Unas letras de su nombre</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Back to the text</source>
        <translation>Volver al texto</translation>
    </message>
    <message>
        <source>Look it over, and save it with Ctrl+Return.</source>
        <translation>Revisarlo y guardarlo con Ctrl+Intro.</translation>
    </message>
    <message>
        <source>Next question, the one before</source>
        <translation>Pregunta siguiente, la anterior</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Open a text</source>
        <translation>Abrir un texto</translation>
    </message>
    <message>
        <source>Open notes</source>
        <translation>Abrir notas</translation>
    </message>
    <message>
        <source>Question {number} of {count}</source>
        <translation>Pregunta {number} de {count}</translation>
    </message>
    <message>
        <source>Saved {sets} on {count} days.</source>
        <translation>Guardado: {sets} en {count} días.</translation>
    </message>
    <message>
        <source>Take an answer</source>
        <translation>Tomar una respuesta</translation>
    </message>
    <message>
        <source>Take over notes</source>
        <translation>Incorporar notas</translation>
    </message>
    <message>
        <source>Take over what is certain</source>
        <translation>Incorporar lo seguro</translation>
    </message>
    <message>
        <source>Text (*.txt *.md)</source>
        <translation>Texto (*.txt *.md)</translation>
    </message>
    <message>
        <source>The session of {day} is being typed: save or clear it first.</source>
        <translation>Se está escribiendo la sesión del {day}: antes hay que guardarla o vaciarla.</translation>
    </message>
    <message>
        <source>Which exercise is meant?</source>
        <translation>¿A qué ejercicio se refiere?</translation>
    </message>
    <message>
        <source>here: {word}</source>
        <translation>aquí: {word}</translation>
    </message>
</context>
<context>
    <name>NotesPage</name>
    <message>
        <source>Day of what stands under no date</source>
        <translation>Día de lo que no lleva fecha</translation>
    </message>
    <message>
        <source>Open a text…</source>
        <translation>Abrir un texto…</translation>
    </message>
    <message>
        <source>Paste what was written, as it was written:

Mon 23 Nov
squat 3x5 60kg
bench 45 8,8,7 rpe 8
push ups 12/10/9</source>
        <translation>Pegar lo escrito tal como se escribió:

lun 23 nov
sentadilla 3x5 60kg
press banca 45 8,8,7 rpe 8
flexiones 12/10/9</translation>
    </message>
    <message>
        <source>What is read appears here, day by day, before anything is saved. What is doubtful is asked; words that nothing came of stay visible in the text.</source>
        <translation>Aquí aparece lo leído, día a día, antes de guardar nada. Lo dudoso se pregunta; las palabras que no dieron nada siguen a la vista en el texto.</translation>
    </message>
    <message>
        <source>underlined: read   waved: doubtful   dashed: not read</source>
        <translation>subrayado: leído   ondulado: dudoso   a trazos: sin leer</translation>
    </message>
</context>
<context>
    <name>NotesProposal</name>
    <message>
        <source>= on record already</source>
        <translation>= ya en el registro</translation>
    </message>
    <message>
        <source>? doubtful</source>
        <translation>? dudoso</translation>
    </message>
    <message>
        <source>? which day</source>
        <translation>? qué día</translation>
    </message>
    <message>
        <source>Answer the question about {name}</source>
        <translation>Responder a la pregunta sobre {name}</translation>
    </message>
    <message>
        <source>Which day is it?</source>
        <translation>¿Qué día es?</translation>
    </message>
    <message>
        <source>no set</source>
        <translation>ninguna serie</translation>
    </message>
    <message>
        <source>{name}: choose another exercise</source>
        <translation>{name}: elegir otro ejercicio</translation>
    </message>
    <message>
        <source>– left out</source>
        <translation>– omitido</translation>
    </message>
    <message>
        <source>✓ certain</source>
        <translation>✓ seguro</translation>
    </message>
</context>
<context>
    <name>NotesQuestions</name>
    <message>
        <source>Answer</source>
        <translation>Responder</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Anterior</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
</context>
<context>
    <name>NotesText</name>
    <message>
        <source>Notes of the trainee</source>
        <translation>Notas del atleta</translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Copy the text</source>
        <translation>Copiar el texto</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Detalles</translation>
    </message>
    <message>
        <source>Rungwise</source>
        <translation>Rungwise</translation>
    </message>
</context>
<context>
    <name>Numbers</name>
    <message>
        <source>A whole number.</source>
        <translation>Un número entero.</translation>
    </message>
    <message>
        <source>Allowed: {least} to {most}.</source>
        <translation>Se admite: {least} a {most}.</translation>
    </message>
    <message>
        <source>At most {decimals} places after the decimal mark.</source>
        <translation>Como mucho {decimals} cifras tras el signo decimal.</translation>
    </message>
    <message>
        <source>At most {most} {unit}.</source>
        <translation>Como mucho {most} {unit}.</translation>
    </message>
    <message>
        <source>Needed: {least} to {most}.</source>
        <translation>Falta: {least} a {most}.</translation>
    </message>
    <message>
        <source>No separators between thousands: write 1250.5 or 1250,5.</source>
        <translation>Sin separadores de miles: escribir 1250.5 o 1250,5.</translation>
    </message>
    <message>
        <source>Not a number: digits, and one decimal point or comma.</source>
        <translation>No es un número: cifras y un solo punto o coma decimal.</translation>
    </message>
    <message>
        <source>The other decimal mark.</source>
        <translation>El otro signo decimal.</translation>
    </message>
    <message>
        <source>Thousands or a decimal? Write it without the mark, or with two places after it.</source>
        <translation>¿Miles o decimales? Escribirlo sin el signo, o con dos cifras detrás.</translation>
    </message>
    <message>
        <source>{value}: is this meant?</source>
        <translation>{value}: ¿es lo que se quería?</translation>
    </message>
</context>
<context>
    <name>NumbersSaving</name>
    <message>
        <source>All of it (spreadsheet)…</source>
        <translation>Todo (hoja de cálculo)…</translation>
    </message>
    <message>
        <source>Not saved: {why}</source>
        <translation>No se guardó: {why}</translation>
    </message>
    <message>
        <source>Save the numbers</source>
        <translation>Guardar los números</translation>
    </message>
    <message>
        <source>Saved to {path}</source>
        <translation>Guardado en {path}</translation>
    </message>
    <message>
        <source>{what} (CSV)…</source>
        <translation>{what} (CSV)…</translation>
    </message>
</context>
<context>
    <name>OutcomeBlock</name>
    <message>
        <source>Set otherwise</source>
        <translation>Fijar de otro modo</translation>
    </message>
    <message>
        <source>a test</source>
        <translation>una prueba</translation>
    </message>
    <message>
        <source>{exercise}: set the next target otherwise</source>
        <translation>{exercise}: fijar de otro modo el próximo objetivo</translation>
    </message>
</context>
<context>
    <name>OutcomeFoot</name>
    <message>
        <source>Back to the session</source>
        <translation>Volver a la sesión</translation>
    </message>
    <message>
        <source>Next trainee</source>
        <translation>Atleta siguiente</translation>
    </message>
    <message>
        <source>Next: {name}</source>
        <translation>Siguiente: {name}</translation>
    </message>
    <message>
        <source>Remove the session</source>
        <translation>Quitar la sesión</translation>
    </message>
    <message>
        <source>To the desk</source>
        <translation>Al escritorio</translation>
    </message>
    <message>
        <source>Undo saving</source>
        <translation>Deshacer lo guardado</translation>
    </message>
</context>
<context>
    <name>Outcomes</name>
    <message>
        <source>as asked</source>
        <translation>como se pedía</translation>
    </message>
    <message>
        <source>done, not counted</source>
        <translation>hecho, no cuenta</translation>
    </message>
    <message>
        <source>fewer sets, each as asked</source>
        <translation>menos series, cada una como se pedía</translation>
    </message>
    <message>
        <source>less than asked</source>
        <translation>menos de lo pedido</translation>
    </message>
    <message>
        <source>less than asked, but more than last time</source>
        <translation>menos de lo pedido, pero más que la última vez</translation>
    </message>
    <message>
        <source>more than asked</source>
        <translation>más de lo pedido</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>no hecho</translation>
    </message>
</context>
<context>
    <name>PaperOutput</name>
    <message>
        <source>Report saved to {path}</source>
        <translation>Informe guardado en {path}</translation>
    </message>
    <message>
        <source>Report sent to {printer}</source>
        <translation>Informe enviado a {printer}</translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation>Guardar el informe</translation>
    </message>
    <message>
        <source>The printer did not take the report.</source>
        <translation>La impresora no aceptó el informe.</translation>
    </message>
</context>
<context>
    <name>ParcelPage</name>
    <message>
        <source>Another file…</source>
        <translation>Otro archivo…</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Incorporar</translation>
    </message>
</context>
<context>
    <name>PassphraseChange</name>
    <message>
        <source>At least {count} letters; several words are good.</source>
        <translation>Al menos {count} letras; varias palabras van bien.</translation>
    </message>
    <message>
        <source>New passphrase</source>
        <translation>Contraseña nueva</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Contraseña</translation>
    </message>
    <message>
        <source>Passphrase of the data file</source>
        <translation>Contraseña del archivo de datos</translation>
    </message>
    <message>
        <source>Remove the passphrase</source>
        <translation>Quitar la contraseña</translation>
    </message>
    <message>
        <source>Set the passphrase</source>
        <translation>Poner la contraseña</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>La misma otra vez</translation>
    </message>
    <message>
        <source>The two are not the same.</source>
        <translation>Las dos no coinciden.</translation>
    </message>
    <message>
        <source>With a passphrase the data file and all its backups are encrypted; they are written anew now. Nobody can open them without it, and nobody can help if it is forgotten: write it down and keep it where the file is not.</source>
        <translation>Con contraseña, el archivo de datos y todas sus copias de seguridad se cifran; se escriben de nuevo ahora. Sin ella nadie puede abrirlos, y nadie puede ayudar si se olvida: apuntarla y guardarla donde no esté el archivo.</translation>
    </message>
</context>
<context>
    <name>PassphraseQuestion</name>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Contraseña</translation>
    </message>
</context>
<context>
    <name>Past</name>
    <message>
        <source>Add an exercise</source>
        <translation>Añadir un ejercicio</translation>
    </message>
    <message>
        <source>Best of {line}: {change}</source>
        <translation>Lo mejor de {line}: {change}</translation>
    </message>
    <message>
        <source>Both stand on {days}: their sets come together there.</source>
        <translation>Ambos están en {days}: allí sus series se juntan.</translation>
    </message>
    <message>
        <source>Change them all</source>
        <translation>Cambiarlas todas</translation>
    </message>
    <message>
        <source>Corrected</source>
        <translation>Corregida</translation>
    </message>
    <message>
        <source>Entered</source>
        <translation>Escrita</translation>
    </message>
    <message>
        <source>Every set of both is kept.</source>
        <translation>Se conservan todas las series de ambas.</translation>
    </message>
    <message>
        <source>Join the session of {other} into that of {day}</source>
        <translation>Unir la sesión del {other} a la del {day}</translation>
    </message>
    <message>
        <source>Join them</source>
        <translation>Unirlas</translation>
    </message>
    <message>
        <source>Move it</source>
        <translation>Pasarla</translation>
    </message>
    <message>
        <source>Move the session of {day} to {other}</source>
        <translation>Pasar la sesión del {day} al {other}</translation>
    </message>
    <message>
        <source>New caution: {text}</source>
        <translation>Aviso nuevo: {text}</translation>
    </message>
    <message>
        <source>No longer a caution: {text}</source>
        <translation>Ya no es un aviso: {text}</translation>
    </message>
    <message>
        <source>No target, best or caution changes: what is asked rests on the same work.</source>
        <translation>No cambia ningún objetivo, mejor serie ni aviso: lo que se pide se apoya en el mismo trabajo.</translation>
    </message>
    <message>
        <source>One is counted and the other is held: choose one measured alike.</source>
        <translation>Uno se cuenta y el otro se aguanta: elegir uno que se mida igual.</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>Quitarla</translation>
    </message>
    <message>
        <source>Remove the session of {day}</source>
        <translation>Quitar la sesión del {day}</translation>
    </message>
    <message>
        <source>Some sets were done with help: choose a bodyweight exercise.</source>
        <translation>Algunas series se hicieron con ayuda: elegir un ejercicio de peso corporal.</translation>
    </message>
    <message>
        <source>That is the exercise they are recorded as.</source>
        <translation>Ese es el ejercicio con el que están registradas.</translation>
    </message>
    <message>
        <source>Variations of {count} sets are unknown to the other exercise and go.</source>
        <translation>El otro ejercicio no conoce las variaciones de {count} series, que desaparecen.</translation>
    </message>
    <message>
        <source>at {load}</source>
        <translation>con {load}</translation>
    </message>
    <message>
        <source>blank</source>
        <translation>en blanco</translation>
    </message>
    <message>
        <source>day {change}</source>
        <translation>día {change}</translation>
    </message>
    <message>
        <source>effort {change}</source>
        <translation>esfuerzo {change}</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>minutes {change}</source>
        <translation>minutos {change}</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>sin guardar aún</translation>
    </message>
    <message>
        <source>note {change}</source>
        <translation>nota {change}</translation>
    </message>
    <message>
        <source>pain {pain}</source>
        <translation>dolor {pain}</translation>
    </message>
    <message>
        <source>red flag {change}</source>
        <translation>señal de alarma {change}</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>wellness {change}</source>
        <translation>bienestar {change}</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>{amounts} s</source>
        <translation>{amounts} s</translation>
    </message>
    <message>
        <source>{count} sessions of {line} become {other}</source>
        <translation>{count} sesiones de {line} pasan a {other}</translation>
    </message>
    <message>
        <source>{done} {when}</source>
        <translation>{done} {when}</translation>
    </message>
    <message>
        <source>{line}, {day}: {change}</source>
        <translation>{line}, {day}: {change}</translation>
    </message>
    <message>
        <source>{line}: the session of {day} counts differently</source>
        <translation>{line}: la sesión del {day} cuenta de otro modo</translation>
    </message>
    <message>
        <source>{line}: {count} sessions count differently, the first on {day}</source>
        <translation>{line}: {count} sesiones cuentan de otro modo, la primera el {day}</translation>
    </message>
    <message>
        <source>{name} added</source>
        <translation>{name}, añadido</translation>
    </message>
    <message>
        <source>{name} taken out</source>
        <translation>{name}, quitado</translation>
    </message>
    <message>
        <source>{name}, note {change}</source>
        <translation>{name}, nota {change}</translation>
    </message>
    <message>
        <source>{name}, number of sets {change}</source>
        <translation>{name}, número de series {change}</translation>
    </message>
    <message>
        <source>{name}, set {number}: {change}</source>
        <translation>{name}, serie {number}: {change}</translation>
    </message>
</context>
<context>
    <name>PastArea</name>
    <message>
        <source>A few letters, or the arrow keys</source>
        <translation>Unas letras, o las flechas</translation>
    </message>
    <message>
        <source>Another exercise, in all sessions</source>
        <translation>Otro ejercicio, en todas las sesiones</translation>
    </message>
    <message>
        <source>Done. Undo takes it back.</source>
        <translation>Hecho. Deshacer lo devuelve.</translation>
    </message>
    <message>
        <source>Exercise, day or note</source>
        <translation>Ejercicio, día o nota</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Unir</translation>
    </message>
    <message>
        <source>Join with another session</source>
        <translation>Unir con otra sesión</translation>
    </message>
    <message>
        <source>Join with which session? It goes into the one chosen in the list.</source>
        <translation>¿Con qué sesión unirla? Pasa a la elegida en la lista.</translation>
    </message>
    <message>
        <source>Move to another date</source>
        <translation>Pasar a otra fecha</translation>
    </message>
    <message>
        <source>No other session lies within three days.</source>
        <translation>No hay otra sesión a menos de tres días.</translation>
    </message>
    <message>
        <source>No session holds all of these words. Esc shows them all.</source>
        <translation>Ninguna sesión contiene todas estas palabras. Esc las muestra todas.</translation>
    </message>
    <message>
        <source>Nothing is on record yet. Sessions typed in the session form, read from notes or imported stand here, the latest first.</source>
        <translation>Aún no hay nada en el registro. Aquí están las sesiones escritas, leídas de notas o importadas, la última primero.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Open the session</source>
        <translation>Abrir la sesión</translation>
    </message>
    <message>
        <source>Other date</source>
        <translation>Otra fecha</translation>
    </message>
    <message>
        <source>Other exercise</source>
        <translation>Otro ejercicio</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove the session</source>
        <translation>Quitar la sesión</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Search the sessions</source>
        <translation>Buscar en las sesiones</translation>
    </message>
    <message>
        <source>Sessions on record</source>
        <translation>Sesiones registradas</translation>
    </message>
    <message>
        <source>Which exercise was another one, in all sessions?</source>
        <translation>¿Qué ejercicio era otro, en todas las sesiones?</translation>
    </message>
    <message>
        <source>{count} of {all} sessions</source>
        <translation>{count} de {all} sesiones</translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation>{count} sesiones</translation>
    </message>
    <message>
        <source>{line}: which exercise was it?</source>
        <translation>{line}: ¿qué ejercicio era?</translation>
    </message>
</context>
<context>
    <name>PastDate</name>
    <message>
        <source>Leave</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>On which day was it done?</source>
        <translation>¿Qué día se hizo?</translation>
    </message>
    <message>
        <source>The day on which it was done</source>
        <translation>El día en que se hizo</translation>
    </message>
    <message>
        <source>This day has not come yet: today at the latest.</source>
        <translation>Este día aún no ha llegado: hoy como muy tarde.</translation>
    </message>
</context>
<context>
    <name>PastModel</name>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Series</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
</context>
<context>
    <name>PastTable</name>
    <message>
        <source>Sessions on record</source>
        <translation>Sesiones registradas</translation>
    </message>
</context>
<context>
    <name>PersonFields</name>
    <message>
        <source>Days to train</source>
        <translation>Días para entrenar</translation>
    </message>
    <message>
        <source>Experience</source>
        <translation>Experiencia</translation>
    </message>
    <message>
        <source>Minutes a session</source>
        <translation>Minutos por sesión</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Sex, for body segments only</source>
        <translation>Sexo, para segmentos</translation>
    </message>
    <message>
        <source>Stature cm</source>
        <translation>Estatura cm</translation>
    </message>
    <message>
        <source>Unit of loads</source>
        <translation>Unidad de carga</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Para qué</translation>
    </message>
    <message>
        <source>What to avoid</source>
        <translation>Qué evitar</translation>
    </message>
    <message>
        <source>Year of birth</source>
        <translation>Año de nacimiento</translation>
    </message>
    <message>
        <source>advanced</source>
        <translation>avanzado</translation>
    </message>
    <message>
        <source>female</source>
        <translation>femenino</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation>intermedio</translation>
    </message>
    <message>
        <source>male</source>
        <translation>masculino</translation>
    </message>
    <message>
        <source>novice</source>
        <translation>principiante</translation>
    </message>
</context>
<context>
    <name>PhaseLine</name>
    <message>
        <source>Left and right choose a phase, Return edits it, Alt with them moves it.</source>
        <translation>Izquierda y derecha eligen una fase, Intro la edita, Alt con ellas la mueve.</translation>
    </message>
    <message>
        <source>Phase {place} of {count}: {name}, {weeks}</source>
        <translation>Fase {place} de {count}: {name}, {weeks}</translation>
    </message>
    <message>
        <source>week {number}</source>
        <translation>semana {number}</translation>
    </message>
</context>
<context>
    <name>PhasePanel</name>
    <message>
        <source>Add a deload week after it</source>
        <translation>Añadir una semana de descarga después</translation>
    </message>
    <message>
        <source>Add a phase after it</source>
        <translation>Añadir una fase después</translation>
    </message>
    <message>
        <source>Add a test week after it</source>
        <translation>Añadir una semana de prueba después</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Name of the phase</source>
        <translation>Nombre de la fase</translation>
    </message>
    <message>
        <source>Phase</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>Rename the phase</source>
        <translation>Cambiar el nombre de la fase</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Semanas</translation>
    </message>
    <message>
        <source>Weeks of the phase</source>
        <translation>Semanas de la fase</translation>
    </message>
    <message>
        <source>What the phase is for</source>
        <translation>Para qué es la fase</translation>
    </message>
</context>
<context>
    <name>Phases</name>
    <message>
        <source>assess</source>
        <translation>evaluación</translation>
    </message>
    <message>
        <source>build</source>
        <translation>desarrollo</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>descarga</translation>
    </message>
</context>
<context>
    <name>PlacePanel</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
</context>
<context>
    <name>PlainCautions</name>
    <message>
        <source>A warning sign was noted on {day}: no training until a licensed professional allows it. In doubt seek medical help at once.</source>
        <translation>Se anotó una señal de alarma el {day}: sin entrenar hasta que un profesional de la salud habilitado lo permita. En la duda, buscar atención médica enseguida.</translation>
    </message>
    <message>
        <source>All steps planned for it are done: something new comes next.</source>
        <translation>Todos los pasos previstos están hechos: ahora viene algo nuevo.</translation>
    </message>
    <message>
        <source>For young people: good form before load, days of rest between, no tests of the maximum, and always supervised.</source>
        <translation>Para jóvenes: buena técnica antes que carga, días de descanso en medio, sin pruebas de máximo y siempre con supervisión.</translation>
    </message>
    <message>
        <source>From 65 on: moderate loads, days of rest between, and exercises for balance on 3 days a week.</source>
        <translation>Desde los 65: cargas moderadas, días de descanso en medio y ejercicios de equilibrio 3 días por semana.</translation>
    </message>
    <message>
        <source>No full day of rest lies between {first} and {second} for the same movement ({pattern}).</source>
        <translation>No hay un día entero de descanso entre el {first} y el {second} para el mismo movimiento ({pattern}).</translation>
    </message>
    <message>
        <source>Not trained since {last}: it begins again with what was done last, or less.</source>
        <translation>Sin entrenar desde el {last}: se vuelve a empezar con lo último que se hizo, o menos.</translation>
    </message>
    <message>
        <source>Other activities are not written down, so more was done than shown.</source>
        <translation>Otras actividades no están anotadas, así que se hizo más de lo que se muestra.</translation>
    </message>
    <message>
        <source>Pain of {pain} out of 10 was noted on {day}: nothing gets harder until a session without it.</source>
        <translation>Se anotó dolor {pain} de 10 el {day}: nada se hace más duro hasta una sesión sin dolor.</translation>
    </message>
    <message>
        <source>Pain of {pain} out of 10 was noted on {day}: this exercise rests until it is decided how to go on.</source>
        <translation>Se anotó dolor {pain} de 10 el {day}: este ejercicio descansa hasta decidir cómo seguir.</translation>
    </message>
    <message>
        <source>Several signs speak for an easier week: {signals}.</source>
        <translation>Varias señales aconsejan una semana más suave: {signals}.</translation>
    </message>
    <message>
        <source>Several things got harder at once: {variables}.</source>
        <translation>Varias cosas se hicieron más duras a la vez: {variables}.</translation>
    </message>
    <message>
        <source>Some muscles are trained less than twice a week: {muscles}.</source>
        <translation>Algunos músculos se entrenan menos de dos veces por semana: {muscles}.</translation>
    </message>
    <message>
        <source>The days of the week to {week_ends} were nearly alike: hard and easy days should differ more.</source>
        <translation>Los días de la semana hasta el {week_ends} fueron casi iguales: los días duros y fáciles deberían diferir más.</translation>
    </message>
    <message>
        <source>The health questions have not been asked yet.</source>
        <translation>Aún no se han hecho las preguntas de salud.</translation>
    </message>
    <message>
        <source>The health questions of {day} call for advice: no training until a licensed professional allows it.</source>
        <translation>Las preguntas de salud del {day} piden consejo: sin entrenar hasta que un profesional de la salud habilitado lo permita.</translation>
    </message>
    <message>
        <source>The load went up by {over} at once.</source>
        <translation>La carga subió un {over} de una vez.</translation>
    </message>
    <message>
        <source>The next step that can be loaded is {over} harder, so more repetitions come first.</source>
        <translation>El paso siguiente que se puede cargar es un {over} más duro, así que antes vienen más repeticiones.</translation>
    </message>
    <message>
        <source>There has been no easier week since {since}.</source>
        <translation>No ha habido una semana más suave desde el {since}.</translation>
    </message>
    <message>
        <source>This has probably stopped getting better for now, so something will change.</source>
        <translation>Probablemente esto ha dejado de mejorar por ahora, así que algo va a cambiar.</translation>
    </message>
</context>
<context>
    <name>PositionEditor</name>
    <message>
        <source>Leave</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>Seconds</source>
        <translation>Segundos</translation>
    </message>
    <message>
        <source>Set it so</source>
        <translation>Fijarlo así</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Series</translation>
    </message>
    <message>
        <source>Variation</source>
        <translation>Variación</translation>
    </message>
    <message>
        <source>Why the position is set</source>
        <translation>Por qué se fija la posición</translation>
    </message>
    <message>
        <source>Why? It is kept with the line</source>
        <translation>¿Por qué? Se guarda con la línea</translation>
    </message>
</context>
<context>
    <name>ProgramActs</name>
    <message>
        <source>Add a deload week</source>
        <translation>Añadir una semana de descarga</translation>
    </message>
    <message>
        <source>Add a phase</source>
        <translation>Añadir una fase</translation>
    </message>
    <message>
        <source>Add a training day</source>
        <translation>Añadir un día de entrenamiento</translation>
    </message>
    <message>
        <source>Day {number}</source>
        <translation>Día {number}</translation>
    </message>
    <message>
        <source>Deload</source>
        <translation>Descarga</translation>
    </message>
    <message>
        <source>Duplicate {day}</source>
        <translation>Duplicar {day}</translation>
    </message>
    <message>
        <source>Duplicate {phase}</source>
        <translation>Duplicar {phase}</translation>
    </message>
    <message>
        <source>Mend the balance</source>
        <translation>Arreglar el equilibrio</translation>
    </message>
    <message>
        <source>Move {day}</source>
        <translation>Mover {day}</translation>
    </message>
    <message>
        <source>Move {phase}</source>
        <translation>Mover {phase}</translation>
    </message>
    <message>
        <source>Next phase</source>
        <translation>Fase siguiente</translation>
    </message>
    <message>
        <source>Put a test week first</source>
        <translation>Poner antes una semana de prueba</translation>
    </message>
    <message>
        <source>Re-test</source>
        <translation>Nueva prueba</translation>
    </message>
    <message>
        <source>Remove {day}</source>
        <translation>Quitar {day}</translation>
    </message>
    <message>
        <source>Remove {phase}</source>
        <translation>Quitar {phase}</translation>
    </message>
    <message>
        <source>Rename {name}</source>
        <translation>Cambiar el nombre de {name}</translation>
    </message>
    <message>
        <source>Test again</source>
        <translation>Probar de nuevo</translation>
    </message>
    <message>
        <source>Test week</source>
        <translation>Semana de prueba</translation>
    </message>
    <message>
        <source>add</source>
        <translation>añadir</translation>
    </message>
    <message>
        <source>duplicate</source>
        <translation>duplicar</translation>
    </message>
    <message>
        <source>move</source>
        <translation>mover</translation>
    </message>
    <message>
        <source>remove</source>
        <translation>quitar</translation>
    </message>
    <message>
        <source>{exercise}: {what}</source>
        <translation>{exercise}: {what}</translation>
    </message>
    <message>
        <source>{old} becomes {new}</source>
        <translation>{old} pasa a {new}</translation>
    </message>
    <message>
        <source>{old} becomes {new} everywhere</source>
        <translation>{old} pasa a {new} en todas partes</translation>
    </message>
    <message>
        <source>{weekday} is taken: choose another one, or move that day first.</source>
        <translation>{weekday} está ocupado: elegir otro, o mover antes ese día.</translation>
    </message>
</context>
<context>
    <name>ProgramClipboard</name>
    <message>
        <source>Nothing was copied yet.</source>
        <translation>Aún no se ha copiado nada.</translation>
    </message>
    <message>
        <source>Paste {what}</source>
        <translation>Pegar {what}</translation>
    </message>
    <message>
        <source>{what} copied; Ctrl+V pastes it.</source>
        <translation>Copiado: {what}; Ctrl+V lo pega.</translation>
    </message>
</context>
<context>
    <name>ProgramEditor</name>
    <message>
        <source>Build</source>
        <translation>Desarrollo</translation>
    </message>
    <message>
        <source>Draft {name}</source>
        <translation>Borrador {name}</translation>
    </message>
    <message>
        <source>Duplicate {name}</source>
        <translation>Duplicar {name}</translation>
    </message>
    <message>
        <source>Load {name}</source>
        <translation>Cargar {name}</translation>
    </message>
    <message>
        <source>New program</source>
        <translation>Programa nuevo</translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation>Quitar {name}</translation>
    </message>
    <message>
        <source>{name} is removed; Undo brings it back.</source>
        <translation>{name} está quitado; Deshacer lo devuelve.</translation>
    </message>
</context>
<context>
    <name>ProgramHead</name>
    <message>
        <source>End</source>
        <translation>Terminar</translation>
    </message>
    <message>
        <source>End for {name}</source>
        <translation>Terminar para {name}</translation>
    </message>
    <message>
        <source>Give to {name}</source>
        <translation>Asignar a {name}</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Name of the program</source>
        <translation>Nombre del programa</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Programs</source>
        <translation>Programas</translation>
    </message>
    <message>
        <source>Put a test week first</source>
        <translation>Poner antes una semana de prueba</translation>
    </message>
    <message>
        <source>Replace</source>
        <translation>Sustituir</translation>
    </message>
    <message>
        <source>Test again at the end</source>
        <translation>Probar de nuevo al final</translation>
    </message>
    <message>
        <source>Weeks ahead</source>
        <translation>Semanas</translation>
    </message>
    <message>
        <source>{name} started on {day}</source>
        <translation>{name} empezó el {day}</translation>
    </message>
    <message>
        <source>{name} starts on {day}</source>
        <translation>{name} empieza el {day}</translation>
    </message>
</context>
<context>
    <name>ProgramKeys</name>
    <message>
        <source>Add a training day</source>
        <translation>Añadir un día de entrenamiento</translation>
    </message>
    <message>
        <source>All programs</source>
        <translation>Todos los programas</translation>
    </message>
    <message>
        <source>Copy what is marked, a slot, a day or a phase</source>
        <translation>Copiar lo marcado, un puesto, un día o una fase</translation>
    </message>
    <message>
        <source>Draft a program</source>
        <translation>Hacer un borrador de programa</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Earlier or later</source>
        <translation>Antes o después</translation>
    </message>
    <message>
        <source>Edit a slot, a day or a phase</source>
        <translation>Editar un puesto, un día o una fase</translation>
    </message>
    <message>
        <source>Exchange the exercise</source>
        <translation>Cambiar el ejercicio</translation>
    </message>
    <message>
        <source>Give it to the trainee</source>
        <translation>Asignarlo a la persona</translation>
    </message>
    <message>
        <source>Mark a slot, or all of a day</source>
        <translation>Marcar un puesto, o todos los de un día</translation>
    </message>
    <message>
        <source>Mark everything</source>
        <translation>Marcar todo</translation>
    </message>
    <message>
        <source>Mark this and the next</source>
        <translation>Marcar este y el siguiente</translation>
    </message>
    <message>
        <source>New program</source>
        <translation>Programa nuevo</translation>
    </message>
    <message>
        <source>Paste, also into another program</source>
        <translation>Pegar, también en otro programa</translation>
    </message>
    <message>
        <source>Print or save as PDF</source>
        <translation>Imprimir o guardar como PDF</translation>
    </message>
    <message>
        <source>Put a test week first, or test again</source>
        <translation>Poner antes una semana de prueba, o probar de nuevo</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Replace an exercise everywhere</source>
        <translation>Sustituir un ejercicio en todas partes</translation>
    </message>
    <message>
        <source>Weeks ahead</source>
        <translation>Próximas semanas</translation>
    </message>
</context>
<context>
    <name>ProgramMarks</name>
    <message>
        <source>Remove {count} slots</source>
        <translation>Quitar {count} puestos</translation>
    </message>
    <message>
        <source>{count} slots: {what}</source>
        <translation>{count} puestos: {what}</translation>
    </message>
</context>
<context>
    <name>ProgramPage</name>
    <message>
        <source>Add a training day</source>
        <translation>Añadir un día de entrenamiento</translation>
    </message>
</context>
<context>
    <name>ProgramPrint</name>
    <message>
        <source>Hard sets in week {number}: {sets}.</source>
        <translation>Series duras en la semana {number}: {sets}.</translation>
    </message>
    <message>
        <source>from the starts of its slots</source>
        <translation>desde los inicios de sus puestos</translation>
    </message>
    <message>
        <source>from {day}</source>
        <translation>desde el {day}</translation>
    </message>
    <message>
        <source>targets if all goes as asked</source>
        <translation>objetivos si todo va como se pide</translation>
    </message>
    <message>
        <source>week {first}</source>
        <translation>semana {first}</translation>
    </message>
    <message>
        <source>weeks {first} to {last}</source>
        <translation>semanas {first} a {last}</translation>
    </message>
    <message>
        <source>{name} · about {time}</source>
        <translation>{name} · unos {time}</translation>
    </message>
</context>
<context>
    <name>ProgramPrinting</name>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Program saved to {path}</source>
        <translation>Programa guardado en {path}</translation>
    </message>
    <message>
        <source>Program sent to {printer}</source>
        <translation>Programa enviado a {printer}</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Guardar como PDF…</translation>
    </message>
    <message>
        <source>Save the program</source>
        <translation>Guardar el programa</translation>
    </message>
    <message>
        <source>The printer did not take the program.</source>
        <translation>La impresora no aceptó el programa.</translation>
    </message>
</context>
<context>
    <name>ProgramShelf</name>
    <message>
        <source>A program holds phases of some weeks, a phase its training days, a day its exercises. Each exercise gets a rule that says what grows next. Begin with a blank one, have one drafted from days, minutes and equipment, or load one that ships; each becomes yours to edit.</source>
        <translation>Un programa contiene fases de algunas semanas; una fase, sus días de entrenamiento; un día, sus ejercicios. Cada ejercicio recibe una regla que dice qué crece después. Se puede empezar en blanco, con un borrador a partir de días, minutos y equipo, o con uno de los incluidos; todos se pueden editar.</translation>
    </message>
    <message>
        <source>Draft a program</source>
        <translation>Hacer un borrador de programa</translation>
    </message>
    <message>
        <source>Load a starter program</source>
        <translation>Cargar un programa inicial</translation>
    </message>
    <message>
        <source>Load the starter program {name}</source>
        <translation>Cargar el programa inicial {name}</translation>
    </message>
    <message>
        <source>New program</source>
        <translation>Programa nuevo</translation>
    </message>
    <message>
        <source>No program yet</source>
        <translation>Aún no hay programa</translation>
    </message>
    <message>
        <source>Programs</source>
        <translation>Programas</translation>
    </message>
    <message>
        <source>it becomes an ordinary program to edit</source>
        <translation>se vuelve un programa normal que se puede editar</translation>
    </message>
</context>
<context>
    <name>Programs</name>
    <message>
        <source>1 day a week</source>
        <translation>1 día por semana</translation>
    </message>
    <message>
        <source>{count} days a week</source>
        <translation>{count} días por semana</translation>
    </message>
</context>
<context>
    <name>Progress</name>
    <message>
        <source>% of body mass</source>
        <translation>% de la masa corporal</translation>
    </message>
    <message>
        <source>% of the full position</source>
        <translation>% de la posición completa</translation>
    </message>
    <message>
        <source>1 session</source>
        <translation>1 sesión</translation>
    </message>
    <message>
        <source>A plateau is likely ({share}).</source>
        <translation>Un estancamiento es probable ({share}).</translation>
    </message>
    <message>
        <source>A plateau is possible ({share}).</source>
        <translation>Un estancamiento es posible ({share}).</translation>
    </message>
    <message>
        <source>A plateau is unlikely ({share}).</source>
        <translation>Un estancamiento es improbable ({share}).</translation>
    </message>
    <message>
        <source>A plateau is very likely ({share}).</source>
        <translation>Un estancamiento es muy probable ({share}).</translation>
    </message>
    <message>
        <source>A trend needs two weeks: from {day} on.</source>
        <translation>Una tendencia necesita dos semanas: desde el {day}.</translation>
    </message>
    <message>
        <source>A year earlier</source>
        <translation>Un año antes</translation>
    </message>
    <message>
        <source>All other variations</source>
        <translation>Todas las demás variaciones</translation>
    </message>
    <message>
        <source>Best set</source>
        <translation>Mejor serie</translation>
    </message>
    <message>
        <source>Best so far ({day}): {done}.</source>
        <translation>Lo mejor hasta ahora ({day}): {done}.</translation>
    </message>
    <message>
        <source>Down {gain} a week (80 %: {low} to {high}).</source>
        <translation>Baja {gain} por semana (80 %: {low} a {high}).</translation>
    </message>
    <message>
        <source>Effective load</source>
        <translation>Carga efectiva</translation>
    </message>
    <message>
        <source>Estimated maximum</source>
        <translation>Máximo estimado</translation>
    </message>
    <message>
        <source>Four</source>
        <translation>Cuatro</translation>
    </message>
    <message>
        <source>Goal: {goal}.</source>
        <translation>Meta: {goal}.</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Isometría</translation>
    </message>
    <message>
        <source>Last done {days} ago.</source>
        <translation>Hecho por última vez hace {days}.</translation>
    </message>
    <message>
        <source>Level: {gain} a week (80 %: {low} to {high}).</source>
        <translation>Estable: {gain} por semana (80 %: {low} a {high}).</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Momento</translation>
    </message>
    <message>
        <source>No gain is to be seen ({share}).</source>
        <translation>No se ve ninguna mejora ({share}).</translation>
    </message>
    <message>
        <source>Now: {own} {here} {unit}, {other} {there} {unit}.</source>
        <translation>Ahora: {own} {here} {unit}, {other} {there} {unit}.</translation>
    </message>
    <message>
        <source>Of body mass: {own} {here} %, {other} {there} %.</source>
        <translation>De la masa corporal: {own} {here} %, {other} {there} %.</translation>
    </message>
    <message>
        <source>One more session makes a trend.</source>
        <translation>Una sesión más da una tendencia.</translation>
    </message>
    <message>
        <source>Reps</source>
        <translation>Reps</translation>
    </message>
    <message>
        <source>Reps at a load</source>
        <translation>Reps con una carga</translation>
    </message>
    <message>
        <source>Sessions of deload or pain make no trend.</source>
        <translation>Las sesiones de descarga o con dolor no dan tendencia.</translation>
    </message>
    <message>
        <source>Such sets give no estimate of the maximum, so no trend.</source>
        <translation>Estas series no dan un máximo estimado, así que no hay tendencia.</translation>
    </message>
    <message>
        <source>The {weeks} before</source>
        <translation>Las {weeks} anteriores</translation>
    </message>
    <message>
        <source>These {weeks}</source>
        <translation>Estas {weeks}</translation>
    </message>
    <message>
        <source>Three</source>
        <translation>Tres</translation>
    </message>
    <message>
        <source>Top load</source>
        <translation>Carga mayor</translation>
    </message>
    <message>
        <source>Trainee: {name}</source>
        <translation>Atleta: {name}</translation>
    </message>
    <message>
        <source>Two</source>
        <translation>Dos</translation>
    </message>
    <message>
        <source>Up {gain} a week (80 %: {low} to {high}).</source>
        <translation>Sube {gain} por semana (80 %: {low} a {high}).</translation>
    </message>
    <message>
        <source>Variation</source>
        <translation>Variación</translation>
    </message>
    <message>
        <source>Variation: {name}</source>
        <translation>Variación: {name}</translation>
    </message>
    <message>
        <source>Variations known by their order alone make no trend.</source>
        <translation>Las variaciones de las que solo se conoce el orden no dan tendencia.</translation>
    </message>
    <message>
        <source>Week of {day}: {done} hard sets, none planned</source>
        <translation>Semana del {day}: {done} series duras, ninguna planeada</translation>
    </message>
    <message>
        <source>Week of {day}: {done} of {planned} hard sets planned</source>
        <translation>Semana del {day}: {done} de {planned} series duras planeadas</translation>
    </message>
    <message>
        <source>Which of the two gains faster is open.</source>
        <translation>Cuál de los dos avanza más rápido está por ver.</translation>
    </message>
    <message>
        <source>a test</source>
        <translation>una prueba</translation>
    </message>
    <message>
        <source>away</source>
        <translation>ausencia</translation>
    </message>
    <message>
        <source>best set, load × reps</source>
        <translation>mejor serie, carga × reps</translation>
    </message>
    <message>
        <source>best so far</source>
        <translation>lo mejor hasta ahora</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>descarga</translation>
    </message>
    <message>
        <source>effective load {load}</source>
        <translation>carga efectiva {load}</translation>
    </message>
    <message>
        <source>estimated one-repetition maximum</source>
        <translation>máximo estimado de una repetición</translation>
    </message>
    <message>
        <source>estimated {load} (80 %: {low} to {high})</source>
        <translation>estimado {load} (80 %: {low} a {high})</translation>
    </message>
    <message>
        <source>estimated {load}, uncertain (80 %: {low} to {high})</source>
        <translation>estimado {load}, incierto (80 %: {low} a {high})</translation>
    </message>
    <message>
        <source>goal {what}</source>
        <translation>meta {what}</translation>
    </message>
    <message>
        <source>highest effective load of a session</source>
        <translation>mayor carga efectiva de una sesión</translation>
    </message>
    <message>
        <source>highest load of a session</source>
        <translation>mayor carga de una sesión</translation>
    </message>
    <message>
        <source>hold of the best set</source>
        <translation>segundos de la mejor serie</translation>
    </message>
    <message>
        <source>ill</source>
        <translation>enfermedad</translation>
    </message>
    <message>
        <source>injured</source>
        <translation>lesión</translation>
    </message>
    <message>
        <source>load × reps {work}</source>
        <translation>carga × reps {work}</translation>
    </message>
    <message>
        <source>moment of the best set, as a share of the full position</source>
        <translation>momento de la mejor serie, como parte de la posición completa</translation>
    </message>
    <message>
        <source>most reps of a set at one load</source>
        <translation>más reps de una serie con una misma carga</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>no cuenta</translation>
    </message>
    <message>
        <source>pain {pain} of 10</source>
        <translation>dolor {pain} de 10</translation>
    </message>
    <message>
        <source>paler: deload or pain, not counted</source>
        <translation>más pálido: descarga o dolor, no cuenta</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>reps</translation>
    </message>
    <message>
        <source>reps at {load}</source>
        <translation>reps con {load}</translation>
    </message>
    <message>
        <source>reps of the best set</source>
        <translation>reps de la mejor serie</translation>
    </message>
    <message>
        <source>variation of the best set</source>
        <translation>variación de la mejor serie</translation>
    </message>
    <message>
        <source>{count} in reserve</source>
        <translation>{count} en reserva</translation>
    </message>
    <message>
        <source>{count} more sessions make a trend.</source>
        <translation>{count} sesiones más dan una tendencia.</translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation>{count} sesiones</translation>
    </message>
    <message>
        <source>{day}: {done}</source>
        <translation>{day}: {done}</translation>
    </message>
    <message>
        <source>{first}, {second} a week.</source>
        <translation>{first}, {second} por semana.</translation>
    </message>
    <message>
        <source>{goal} (wanted by {day})</source>
        <translation>{goal} (para el {day})</translation>
    </message>
    <message>
        <source>{goal} between {first} and {last}.</source>
        <translation>{goal} entre el {first} y el {last}.</translation>
    </message>
    <message>
        <source>{goal} by {last}, perhaps already.</source>
        <translation>{goal} a más tardar el {last}, quizá ya.</translation>
    </message>
    <message>
        <source>{goal} is reached.</source>
        <translation>{goal}: meta alcanzada.</translation>
    </message>
    <message>
        <source>{goal} may be reached, or not within a year.</source>
        <translation>{goal} puede estar alcanzado, o no llegar en un año.</translation>
    </message>
    <message>
        <source>{goal}: not within a year at this rate.</source>
        <translation>{goal}: no en un año a este ritmo.</translation>
    </message>
    <message>
        <source>{goal}: {first} at the earliest, perhaps not within a year.</source>
        <translation>{goal}: no antes del {first}, quizá no en un año.</translation>
    </message>
    <message>
        <source>{name} down {gain}</source>
        <translation>{name} baja {gain}</translation>
    </message>
    <message>
        <source>{name} gains faster ({share}).</source>
        <translation>{name} avanza más rápido ({share}).</translation>
    </message>
    <message>
        <source>{name} has nothing of this to show.</source>
        <translation>{name} no tiene nada de esto que mostrar.</translation>
    </message>
    <message>
        <source>{name} has too few sessions for a trend.</source>
        <translation>{name} tiene muy pocas sesiones para una tendencia.</translation>
    </message>
    <message>
        <source>{name} level</source>
        <translation>{name} estable</translation>
    </message>
    <message>
        <source>{name} perhaps gains faster ({share}).</source>
        <translation>{name} quizá avanza más rápido ({share}).</translation>
    </message>
    <message>
        <source>{name} up {gain}</source>
        <translation>{name} sube {gain}</translation>
    </message>
    <message>
        <source>{name}: no session.</source>
        <translation>{name}: ninguna sesión.</translation>
    </message>
    <message>
        <source>{name}: {first} {arrow} {last} {unit} ({change}).</source>
        <translation>{name}: {first} {arrow} {last} {unit} ({change}).</translation>
    </message>
    <message>
        <source>{name}: {sessions}, first {first}, best {best}.</source>
        <translation>{name}: {sessions}, primera {first}, mejor {best}.</translation>
    </message>
    <message>
        <source>{signs} 11 reps and more</source>
        <translation>{signs} 11 reps o más</translation>
    </message>
    <message>
        <source>{signs} 11 reps and more, uncertain</source>
        <translation>{signs} 11 reps o más, incierto</translation>
    </message>
    <message>
        <source>{signs} uncertain</source>
        <translation>{signs} incierto</translation>
    </message>
    <message>
        <source>{signs} uncertain, reserve not told</source>
        <translation>{signs} incierto, reserva sin anotar</translation>
    </message>
    <message>
        <source>■ up to 5 reps</source>
        <translation>■ hasta 5 reps</translation>
    </message>
    <message>
        <source>▲ pain</source>
        <translation>▲ dolor</translation>
    </message>
    <message>
        <source>◇ – – {name}</source>
        <translation>◇ – – {name}</translation>
    </message>
    <message>
        <source>● 6 to 10 reps</source>
        <translation>● 6 a 10 reps</translation>
    </message>
    <message>
        <source>★ best so far</source>
        <translation>★ lo mejor hasta ahora</translation>
    </message>
</context>
<context>
    <name>ProgressArea</name>
    <message>
        <source>1 year</source>
        <translation>1 año</translation>
    </message>
    <message>
        <source>A lighter or heavier load</source>
        <translation>Una carga menor o mayor</translation>
    </message>
    <message>
        <source>Alt+Down, Alt+Up</source>
        <translation>Alt+Abajo, Alt+Arriba</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Masa corporal</translation>
    </message>
    <message>
        <source>Compare with something</source>
        <translation>Comparar con algo</translation>
    </message>
    <message>
        <source>First and last session</source>
        <translation>Primera y última sesión</translation>
    </message>
    <message>
        <source>From session to session</source>
        <translation>De sesión en sesión</translation>
    </message>
    <message>
        <source>Hard sets a week, done over planned</source>
        <translation>Series duras por semana, hechas sobre planeadas</translation>
    </message>
    <message>
        <source>Home, End</source>
        <translation>Inicio, Fin</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Izquierda, Derecha</translation>
    </message>
    <message>
        <source>Less and more of the time</source>
        <translation>Menos y más tiempo</translation>
    </message>
    <message>
        <source>Open the session</source>
        <translation>Abrir la sesión</translation>
    </message>
    <message>
        <source>Previous and next line</source>
        <translation>Línea anterior y siguiente</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Informe</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Guardar…</translation>
    </message>
    <message>
        <source>Set a goal</source>
        <translation>Fijar una meta</translation>
    </message>
    <message>
        <source>Span</source>
        <translation>Periodo</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>Table, body mass</source>
        <translation>Tabla, masa corporal</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Qué se muestra</translation>
    </message>
    <message>
        <source>all</source>
        <translation>todo</translation>
    </message>
</context>
<context>
    <name>ProgressTable</name>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>RIR</source>
        <translation>RIR</translation>
    </message>
    <message>
        <source>Sessions of the chart</source>
        <translation>Sesiones del gráfico</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Serie</translation>
    </message>
</context>
<context>
    <name>Proposals</name>
    <message>
        <source>Choose what to do</source>
        <translation>Elegir qué hacer</translation>
    </message>
    <message>
        <source>Look at the program</source>
        <translation>Ver el programa</translation>
    </message>
    <message>
        <source>Look at the rule</source>
        <translation>Ver la regla</translation>
    </message>
    <message>
        <source>Look at the targets</source>
        <translation>Ver los objetivos</translation>
    </message>
    <message>
        <source>Look at the trainee</source>
        <translation>Ver al atleta</translation>
    </message>
    <message>
        <source>Look at the week</source>
        <translation>Ver la semana</translation>
    </message>
    <message>
        <source>Move a day</source>
        <translation>Mover un día</translation>
    </message>
    <message>
        <source>Plan a deload</source>
        <translation>Planear una descarga</translation>
    </message>
    <message>
        <source>Record the clearance</source>
        <translation>Registrar la autorización</translation>
    </message>
    <message>
        <source>Record the screening</source>
        <translation>Registrar el cuestionario</translation>
    </message>
    <message>
        <source>Say what grows next</source>
        <translation>Decir qué crece después</translation>
    </message>
    <message>
        <source>Say what is recorded</source>
        <translation>Decir qué se registra</translation>
    </message>
</context>
<context>
    <name>QShortcut</name>
    <message>
        <source>Alt</source>
        <translation>Alt</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Retroceso</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <translation>Ctrl</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Supr</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Abajo</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>PgDown</source>
        <translation>Av Pág</translation>
    </message>
    <message>
        <source>PgUp</source>
        <translation>Re Pág</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Mayús</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Arriba</translation>
    </message>
</context>
<context>
    <name>RangeRow</name>
    <message>
        <source>Faster</source>
        <translation>Más rápida</translation>
    </message>
    <message>
        <source>In steps of {by} from {floor}: allowed is {below} or {above}.</source>
        <translation>En pasos de {by} desde {floor}: se admite {below} o {above}.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Say how far: only the slowest may go on without an end.</source>
        <translation>Decir hasta dónde: solo la más lenta puede seguir sin fin.</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Más lenta</translation>
    </message>
    <message>
        <source>The hardest is easier than the easiest: exchange them.</source>
        <translation>La más difícil es más fácil que la más fácil: intercambiarlas.</translation>
    </message>
    <message>
        <source>To {ceiling} is below from {floor}: allowed is {floor} and more.</source>
        <translation>«Hasta {ceiling}» queda por debajo de «desde {floor}»: se admite {floor} y más.</translation>
    </message>
    <message>
        <source>easiest</source>
        <translation>la más fácil</translation>
    </message>
    <message>
        <source>hardest</source>
        <translation>la más difícil</translation>
    </message>
    <message>
        <source>the easiest there is</source>
        <translation>la más fácil que hay</translation>
    </message>
    <message>
        <source>the hardest there is</source>
        <translation>la más difícil que hay</translation>
    </message>
    <message>
        <source>{name}, by</source>
        <translation>{name}, cada</translation>
    </message>
    <message>
        <source>{name}, from</source>
        <translation>{name}, desde</translation>
    </message>
    <message>
        <source>{name}, to</source>
        <translation>{name}, hasta</translation>
    </message>
    <message>
        <source>{name}: when a slower one moves</source>
        <translation>{name}: cuando avanza una más lenta</translation>
    </message>
</context>
<context>
    <name>RangeRows</name>
    <message>
        <source>A floor lies above to {ceiling}: allowed is up to that.</source>
        <translation>Un mínimo está por encima de «hasta {ceiling}»: se admite hasta ese valor.</translation>
    </message>
</context>
<context>
    <name>ReasonField</name>
    <message>
        <source>Needed: the reason, in a word or two. Esc leaves the caution open.</source>
        <translation>Hace falta el motivo, en una o dos palabras. Esc deja el aviso pendiente.</translation>
    </message>
    <message>
        <source>Why not now? Return keeps it with the record</source>
        <translation>¿Por qué ahora no? Intro lo guarda en el registro</translation>
    </message>
    <message>
        <source>Why this caution is set aside</source>
        <translation>Por qué se aparta este aviso</translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message>
        <source> on {day}</source>
        <translation> el {day}</translation>
    </message>
    <message>
        <source>(about {share_before} becomes {share_after} of body mass, ± {plus_minus})</source>
        <translation>(aprox. de {share_before} a {share_after} de la masa corporal, ± {plus_minus})</translation>
    </message>
    <message>
        <source>({share_before} becomes {share_after} of body mass)</source>
        <translation>(de {share_before} a {share_after} de la masa corporal)</translation>
    </message>
    <message>
        <source>A deload is not counted</source>
        <translation>Una descarga no cuenta</translation>
    </message>
    <message>
        <source>A new range, in which the line stays</source>
        <translation>Un rango nuevo, en el que la línea se queda</translation>
    </message>
    <message>
        <source>A start is needed: assess, or enter one</source>
        <translation>Hace falta un inicio: evaluar, o escribir uno</translation>
    </message>
    <message>
        <source>A test is not counted</source>
        <translation>Una prueba no cuenta</translation>
    </message>
    <message>
        <source>A test, no maximum: loads rise; stop after the first set with {stop_rir} or fewer clean repetitions left</source>
        <translation>Una prueba, no un máximo: las cargas suben; parar tras la primera serie con {stop_rir} o menos repeticiones limpias de margen</translation>
    </message>
    <message>
        <source>A test, no maximum: stop while the position is still clean</source>
        <translation>Una prueba, no un máximo: parar mientras la posición aún es limpia</translation>
    </message>
    <message>
        <source>A test, no maximum: stop with {stop_rir} clean repetitions left</source>
        <translation>Una prueba, no un máximo: parar con {stop_rir} repeticiones limpias de margen</translation>
    </message>
    <message>
        <source>Again, and note the reps in reserve: {needed} are needed to go on</source>
        <translation>Otra vez, anotando las reps en reserva: hacen falta {needed} para avanzar</translation>
    </message>
    <message>
        <source>All sets as asked{on_day}: now {after}</source>
        <translation>Todas las series como se pedía{on_day}: ahora {after}</translation>
    </message>
    <message>
        <source>As asked {streak} of {needed} times in a row: once more</source>
        <translation>Como se pedía {streak} de {needed} veces seguidas: una vez más</translation>
    </message>
    <message>
        <source>As asked{on_day}: slower, {after} a repetition</source>
        <translation>Como se pedía{on_day}: más lento, {after} por repetición</translation>
    </message>
    <message>
        <source>As asked{on_day}: {before} becomes {after}</source>
        <translation>Como se pedía{on_day}: de {before} a {after}</translation>
    </message>
    <message>
        <source>Back to the same place twice in {weeks} weeks: a deload or another variable</source>
        <translation>De vuelta en el mismo punto dos veces en {weeks} semanas: una descarga u otra variable</translation>
    </message>
    <message>
        <source>Cleared by a licensed professional: goes on</source>
        <translation>Autorizado por un profesional de la salud habilitado: se sigue</translation>
    </message>
    <message>
        <source>Deload: sets times {sets_factor}, {load_percent} % lighter</source>
        <translation>Descarga: series por {sets_factor}, carga {load_percent} % menor</translation>
    </message>
    <message>
        <source>Done above what was asked: {before_g} becomes {after_g}</source>
        <translation>Hecho por encima de lo pedido: de {before_g} a {after_g}</translation>
    </message>
    <message>
        <source>Done while nothing was asked: not counted</source>
        <translation>Hecho mientras no se pedía nada: no cuenta</translation>
    </message>
    <message>
        <source>Done, but hard: {rir} reps in reserve where {target_rir} were meant</source>
        <translation>Hecho, pero duro: {rir} reps en reserva donde se querían {target_rir}</translation>
    </message>
    <message>
        <source>Every set reached {before}{on_day}: now {after}</source>
        <translation>Cada serie llegó a {before}{on_day}: ahora {after}</translation>
    </message>
    <message>
        <source>From the re-test{on_day}</source>
        <translation>De la nueva prueba{on_day}</translation>
    </message>
    <message>
        <source>Held {before} in every set{on_day}: now {after}</source>
        <translation>{before} aguantados en cada serie{on_day}: ahora {after}</translation>
    </message>
    <message>
        <source>Less than asked ({streak} of {allowed} in a row): the same again</source>
        <translation>Menos de lo pedido ({streak} de {allowed} seguidas): otra vez lo mismo</translation>
    </message>
    <message>
        <source>Missed {misses} in a row, and nothing easier can be set up</source>
        <translation>Sin alcanzar lo pedido ({misses}), y no se puede montar nada más fácil</translation>
    </message>
    <message>
        <source>Missed {misses} in a row, and {instead_of} cannot go back: {variable} does, {before} becomes {after}</source>
        <translation>Sin alcanzar lo pedido ({misses}), y en {instead_of} no se puede bajar: paso atrás en {variable}, de {before} a {after}</translation>
    </message>
    <message>
        <source>Missed {misses} in a row: {variable} back, {before} becomes {after}</source>
        <translation>Sin alcanzar lo pedido ({misses}): paso atrás en {variable}, de {before} a {after}</translation>
    </message>
    <message>
        <source>New range: {after}</source>
        <translation>Rango nuevo: {after}</translation>
    </message>
    <message>
        <source>New range: {before} becomes {after}</source>
        <translation>Rango nuevo: de {before} a {after}</translation>
    </message>
    <message>
        <source>Not done the last time: the same again</source>
        <translation>Sin hacer la última vez: otra vez lo mismo</translation>
    </message>
    <message>
        <source>Nothing is asked until a licensed professional&apos;s clearance is recorded</source>
        <translation>No se pide nada hasta registrar la autorización de un profesional de la salud habilitado</translation>
    </message>
    <message>
        <source>Pain {pain} of 10: no increase</source>
        <translation>Dolor {pain} de 10: sin aumento</translation>
    </message>
    <message>
        <source>Pain {pain} of 10: nothing is asked until you choose lighter, a substitute or a clearance</source>
        <translation>Dolor {pain} de 10: no se pide nada hasta elegir menos carga, un sustituto o una autorización</translation>
    </message>
    <message>
        <source>Ready for one more day, but {weekdays} leave no full day between</source>
        <translation>Hay margen para un día más, pero {weekdays} no dejan un día entero en medio</translation>
    </message>
    <message>
        <source>Ready for one more day: {weekday}</source>
        <translation>Hay margen para un día más: {weekday}</translation>
    </message>
    <message>
        <source>Set by the coach{on_day}</source>
        <translation>Fijado por el entrenador{on_day}</translation>
    </message>
    <message>
        <source>Set by the coach{on_day}: {note}</source>
        <translation>Fijado por el entrenador{on_day}: {note}</translation>
    </message>
    <message>
        <source>Start from a test</source>
        <translation>Inicio por una prueba</translation>
    </message>
    <message>
        <source>The rule is at its end: say what should grow next</source>
        <translation>La regla ha llegado a su fin: decir qué debe crecer después</translation>
    </message>
    <message>
        <source>The start</source>
        <translation>El inicio</translation>
    </message>
    <message>
        <source>The start by what was done before</source>
        <translation>El inicio por lo hecho antes</translation>
    </message>
    <message>
        <source>The start corrected: {before_g} becomes {after_g}</source>
        <translation>Inicio corregido: de {before_g} a {after_g}</translation>
    </message>
    <message>
        <source>The start that the coach set</source>
        <translation>El inicio que fijó el entrenador</translation>
    </message>
    <message>
        <source>The start that the program gives</source>
        <translation>El inicio que da el programa</translation>
    </message>
    <message>
        <source>Top of the range at {amount}{on_day}: {before} becomes {after}, from {restart}</source>
        <translation>Tope del rango con {amount}{on_day}: de {before} a {after}, desde {restart}</translation>
    </message>
    <message>
        <source>Top of the range{on_day}: {before} becomes {after}</source>
        <translation>Tope del rango{on_day}: de {before} a {after}</translation>
    </message>
    <message>
        <source>the first session may correct it</source>
        <translation>la primera sesión puede corregirlo</translation>
    </message>
    <message>
        <source>the first {count} sessions may correct it</source>
        <translation>las primeras {count} sesiones pueden corregirlo</translation>
    </message>
    <message>
        <source>{after} is {over} more, too large a jump for now</source>
        <translation>{after} es un {over} más, un salto demasiado grande por ahora</translation>
    </message>
    <message>
        <source>{after} is {over} more, too large a jump: {reps_needed} reps here first</source>
        <translation>{after} es un {over} más, un salto demasiado grande: antes {reps_needed} reps aquí</translation>
    </message>
    <message>
        <source>{before_g} cannot be made with the equipment: {after_g}</source>
        <translation>{before_g} no se puede montar con el equipo: {after_g}</translation>
    </message>
    <message>
        <source>{before} cannot be set up with the equipment: {after}</source>
        <translation>{before} no se puede montar con el equipo: {after}</translation>
    </message>
    <message>
        <source>{days} since the last time: a new start is needed</source>
        <translation>{days} desde la última vez: hace falta un inicio nuevo</translation>
    </message>
    <message>
        <source>{days} since the last time: from the bottom of the range</source>
        <translation>{days} desde la última vez: desde el mínimo del rango</translation>
    </message>
    <message>
        <source>{days} since the last time: one variation easier</source>
        <translation>{days} desde la última vez: una variación más fácil</translation>
    </message>
    <message>
        <source>{days} since the last time: the last again</source>
        <translation>{days} desde la última vez: otra vez lo último</translation>
    </message>
    <message>
        <source>{days} since the last time: {percent} % lighter</source>
        <translation>{days} desde la última vez: {percent} % menos</translation>
    </message>
    <message>
        <source>{done_g} was done where {asked_g} was asked, too far above to follow. Is it right?</source>
        <translation>Se hizo {done_g} donde se pedía {asked_g}, demasiado por encima para seguirlo. ¿Es correcto?</translation>
    </message>
    <message>
        <source>{done} in the last set, {needed} needed to go on: the same again</source>
        <translation>{done} en la última serie, hacen falta {needed} para avanzar: otra vez lo mismo</translation>
    </message>
    <message>
        <source>{done} of {asked} sets done: the same again</source>
        <translation>{done} de {asked} series hechas: otra vez lo mismo</translation>
    </message>
    <message>
        <source>{done} was done where {asked} was asked, too far above to follow. Is it right?</source>
        <translation>Se hizo «{done}» donde se pedía «{asked}», demasiado por encima para seguirlo. ¿Es correcto?</translation>
    </message>
    <message>
        <source>{percent} % of the main line</source>
        <translation>{percent} % de la línea principal</translation>
    </message>
    <message>
        <source>{percent} % of {line}</source>
        <translation>{percent} % de {line}</translation>
    </message>
    <message>
        <source>{rir} reps in reserve, {needed} needed to go on: the same again</source>
        <translation>{rir} reps en reserva, hacen falta {needed} para avanzar: otra vez lo mismo</translation>
    </message>
    <message>
        <source>{total} in all, {before} the last time: the same again</source>
        <translation>{total} en total, {before} la última vez: otra vez lo mismo</translation>
    </message>
</context>
<context>
    <name>Record</name>
    <message>
        <source>Look at it again, then repeat the change.</source>
        <translation>Mirarlo de nuevo y repetir el cambio.</translation>
    </message>
</context>
<context>
    <name>RedFlagBanner</name>
    <message>
        <source>Nothing is asked of this trainee until a licensed professional&apos;s clearance is recorded with name and date.</source>
        <translation>No se pide nada a este atleta hasta registrar la autorización de un profesional de la salud habilitado, con nombre y fecha.</translation>
    </message>
</context>
<context>
    <name>ReplaceBar</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Replace everywhere</source>
        <translation>Sustituir en todas partes</translation>
    </message>
    <message>
        <source>The exercise to put in its place</source>
        <translation>El ejercicio que se pone en su lugar</translation>
    </message>
    <message>
        <source>The exercise to replace</source>
        <translation>El ejercicio que se sustituye</translation>
    </message>
    <message>
        <source>with: part of its name</source>
        <translation>por: parte de su nombre</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>1 hard set</source>
        <translation>1 serie dura</translation>
    </message>
    <message>
        <source>1 session</source>
        <translation>1 sesión</translation>
    </message>
    <message>
        <source>Ahead</source>
        <translation>Adelante</translation>
    </message>
    <message>
        <source>All trainees</source>
        <translation>Todos los atletas</translation>
    </message>
    <message>
        <source>Best set</source>
        <translation>Mejor serie</translation>
    </message>
    <message>
        <source>Best set, better than ever</source>
        <translation>Mejor serie, mejor que nunca</translation>
    </message>
    <message>
        <source>Better than ever before</source>
        <translation>Mejor que nunca</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Masa corporal</translation>
    </message>
    <message>
        <source>Chart: {what}</source>
        <translation>Gráfico: {what}</translation>
    </message>
    <message>
        <source>Chart: {what}, {unit}</source>
        <translation>Gráfico: {what}, {unit}</translation>
    </message>
    <message>
        <source>Coach&apos;s report</source>
        <translation>Informe del entrenador</translation>
    </message>
    <message>
        <source>Days kept</source>
        <translation>Días cumplidos</translation>
    </message>
    <message>
        <source>Days trained</source>
        <translation>Días entrenados</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Down: {lines}</source>
        <translation>Baja: {lines}</translation>
    </message>
    <message>
        <source>Estimates from load and repetitions: square up to 5 reps, disc 6 to 10, ring 11 and more or uncertain; grey not counted; star best so far. Line and band: trend with 80 % band, dashed where it is only foreseen. Bars: hard sets a week, outlined as planned.</source>
        <translation>Estimaciones por carga y repeticiones: cuadrado hasta 5 reps, disco 6 a 10, anillo 11 o más o incierto; gris no cuenta; estrella lo mejor hasta ahora. Línea y franja: tendencia con franja del 80 %, a trazos donde solo se prevé. Barras: series duras por semana, con contorno las planeadas.</translation>
    </message>
    <message>
        <source>Goal: {line}, {goal}.</source>
        <translation>Meta: {line}, {goal}.</translation>
    </message>
    <message>
        <source>Hard sets</source>
        <translation>Series duras</translation>
    </message>
    <message>
        <source>Hard sets a week by muscle</source>
        <translation>Series duras por semana y músculo</translation>
    </message>
    <message>
        <source>Hard sets a week, everybody</source>
        <translation>Series duras por semana, todos</translation>
    </message>
    <message>
        <source>Highest load of a best set</source>
        <translation>Mayor carga de una mejor serie</translation>
    </message>
    <message>
        <source>Next session: {day}.</source>
        <translation>Próxima sesión: {day}.</translation>
    </message>
    <message>
        <source>Not trained</source>
        <translation>Sin entrenar</translation>
    </message>
    <message>
        <source>Planned days kept</source>
        <translation>Días planeados cumplidos</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Progreso</translation>
    </message>
    <message>
        <source>Progress report</source>
        <translation>Informe de progreso</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sesiones</translation>
    </message>
    <message>
        <source>Sessions with pain</source>
        <translation>Sesiones con dolor</translation>
    </message>
    <message>
        <source>Source: {source}</source>
        <translation>Fuente: {source}</translation>
    </message>
    <message>
        <source>Time noted</source>
        <translation>Tiempo anotado</translation>
    </message>
    <message>
        <source>To be careful about</source>
        <translation>A tener en cuenta</translation>
    </message>
    <message>
        <source>Too few sessions to tell</source>
        <translation>Muy pocas sesiones para decirlo</translation>
    </message>
    <message>
        <source>Trainee</source>
        <translation>Atleta</translation>
    </message>
    <message>
        <source>Trainees</source>
        <translation>Atletas</translation>
    </message>
    <message>
        <source>Trainees to be careful about</source>
        <translation>Atletas con algo a tener en cuenta</translation>
    </message>
    <message>
        <source>Trainees with a line going up</source>
        <translation>Atletas con una línea que sube</translation>
    </message>
    <message>
        <source>Up and down: the 80 % band of the trend lies on one side of level.</source>
        <translation>Sube y baja: la franja del 80 % de la tendencia queda a un lado de lo estable.</translation>
    </message>
    <message>
        <source>Up: {lines}</source>
        <translation>Sube: {lines}</translation>
    </message>
    <message>
        <source>level or open: {count}</source>
        <translation>estable o por ver: {count}</translation>
    </message>
    <message>
        <source>{count} hard sets</source>
        <translation>{count} series duras</translation>
    </message>
    <message>
        <source>{count} more</source>
        <translation>{count} más</translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation>{count} sesiones</translation>
    </message>
    <message>
        <source>{done} of {planned}</source>
        <translation>{done} de {planned}</translation>
    </message>
    <message>
        <source>{done} of {planned} planned ({share})</source>
        <translation>{done} de {planned} planeados ({share})</translation>
    </message>
    <message>
        <source>{done}, {planned} planned</source>
        <translation>{done}, {planned} planeados</translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <translation>{first} a {last}</translation>
    </message>
    <message>
        <source>{goal} by {day}</source>
        <translation>{goal} para el {day}</translation>
    </message>
    <message>
        <source>{hours} h {minutes} min</source>
        <translation>{hours} h {minutes} min</translation>
    </message>
    <message>
        <source>{line}: {set} on {day}</source>
        <translation>{line}: {set} el {day}</translation>
    </message>
    <message>
        <source>{sets} a week: {what} ({source})</source>
        <translation>{sets} por semana: {what} ({source})</translation>
    </message>
</context>
<context>
    <name>ReportArea</name>
    <message>
        <source>1 page</source>
        <translation>1 página</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 año</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Choose a trainee in the roster, or everybody.</source>
        <translation>Elegir un atleta en la lista, o todos.</translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Primer día</translation>
    </message>
    <message>
        <source>Give up</source>
        <translation>Abandonar</translation>
    </message>
    <message>
        <source>Given up. Choose a span to begin again.</source>
        <translation>Abandonado. Elegir un periodo para empezar de nuevo.</translation>
    </message>
    <message>
        <source>Larger, smaller, whole page</source>
        <translation>Más grande, más pequeño, página entera</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Último día</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Numbers…</source>
        <translation>Números…</translation>
    </message>
    <message>
        <source>Of whom</source>
        <translation>De quién</translation>
    </message>
    <message>
        <source>One trainee, their program, everybody</source>
        <translation>Un atleta, su programa, todos</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Preview of the report</source>
        <translation>Vista previa del informe</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Progreso</translation>
    </message>
    <message>
        <source>Reading everybody&apos;s record: {share}</source>
        <translation>Leyendo los registros de todos: {share}</translation>
    </message>
    <message>
        <source>Reading everybody&apos;s record…</source>
        <translation>Leyendo los registros de todos…</translation>
    </message>
    <message>
        <source>Reading the program…</source>
        <translation>Leyendo el programa…</translation>
    </message>
    <message>
        <source>Reports</source>
        <translation>Informes</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Guardar PDF…</translation>
    </message>
    <message>
        <source>Save the numbers…</source>
        <translation>Guardar los números…</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Sesiones</translation>
    </message>
    <message>
        <source>Span</source>
        <translation>Periodo</translation>
    </message>
    <message>
        <source>The program</source>
        <translation>El programa</translation>
    </message>
    <message>
        <source>The trainee</source>
        <translation>El atleta</translation>
    </message>
    <message>
        <source>Trainees</source>
        <translation>Atletas</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Semanas</translation>
    </message>
    <message>
        <source>{count} pages</source>
        <translation>{count} páginas</translation>
    </message>
    <message>
        <source>{name} did not train in this span: choose other days.</source>
        <translation>{name} no entrenó en este periodo: elegir otros días.</translation>
    </message>
    <message>
        <source>{name} has no program now: give them one first.</source>
        <translation>{name} no tiene programa ahora: asignarle uno primero.</translation>
    </message>
</context>
<context>
    <name>Roster</name>
    <message>
        <source>1 trainee</source>
        <translation>1 atleta</translation>
    </message>
    <message>
        <source>Find a trainee</source>
        <translation>Buscar un atleta</translation>
    </message>
    <message>
        <source>Find a trainee by name</source>
        <translation>Buscar un atleta por su nombre</translation>
    </message>
    <message>
        <source>Roster</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>away</source>
        <translation>ausencia</translation>
    </message>
    <message>
        <source>deload from {day}</source>
        <translation>descarga desde {day}</translation>
    </message>
    <message>
        <source>due today</source>
        <translation>hoy toca</translation>
    </message>
    <message>
        <source>first week</source>
        <translation>primera semana</translation>
    </message>
    <message>
        <source>ill</source>
        <translation>enfermedad</translation>
    </message>
    <message>
        <source>injured</source>
        <translation>lesión</translation>
    </message>
    <message>
        <source>next {day}</source>
        <translation>próxima {day}</translation>
    </message>
    <message>
        <source>no program</source>
        <translation>sin programa</translation>
    </message>
    <message>
        <source>{count} trainees</source>
        <translation>{count} atletas</translation>
    </message>
    <message>
        <source>{days} since last</source>
        <translation>{days} desde la última</translation>
    </message>
</context>
<context>
    <name>RuleEditor</name>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>A step when</source>
        <translation>Un paso cuando</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Tras</translation>
    </message>
    <message>
        <source>Back off by percent</source>
        <translation>Retroceder un porcentaje</translation>
    </message>
    <message>
        <source>Follows another line</source>
        <translation>Sigue a otra línea</translation>
    </message>
    <message>
        <source>How the sets relate</source>
        <translation>Cómo se relacionan las series</translation>
    </message>
    <message>
        <source>Let grow too:</source>
        <translation>Dejar crecer también:</translation>
    </message>
    <message>
        <source>Lighter sets lower by percent</source>
        <translation>Series ligeras, porcentaje menos</translation>
    </message>
    <message>
        <source>Misses in a row</source>
        <translation>Veces seguidas sin alcanzar</translation>
    </message>
    <message>
        <source>Moves by</source>
        <translation>Sigue</translation>
    </message>
    <message>
        <source>Percent of the line followed</source>
        <translation>Porcentaje de la línea seguida</translation>
    </message>
    <message>
        <source>Repetitions over in the last set</source>
        <translation>Repeticiones de más en la última serie</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regla</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Series</translation>
    </message>
    <message>
        <source>So many times in a row</source>
        <translation>Cuántas veces seguidas</translation>
    </message>
    <message>
        <source>What gets easier after misses</source>
        <translation>Qué se aligera si no se alcanza</translation>
    </message>
    <message>
        <source>at</source>
        <translation>al</translation>
    </message>
    <message>
        <source>by</source>
        <translation>en</translation>
    </message>
    <message>
        <source>how sets relate</source>
        <translation>relación entre series</translation>
    </message>
    <message>
        <source>in a row</source>
        <translation>veces seguidas</translation>
    </message>
    <message>
        <source>its own rule</source>
        <translation>su propia regla</translation>
    </message>
    <message>
        <source>less</source>
        <translation>menos</translation>
    </message>
    <message>
        <source>lower by</source>
        <translation>menos un</translation>
    </message>
    <message>
        <source>misses in a row</source>
        <translation>veces sin alcanzar</translation>
    </message>
    <message>
        <source>range of the rule</source>
        <translation>rango de la regla</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>reps</translation>
    </message>
    <message>
        <source>the main line</source>
        <translation>la línea principal</translation>
    </message>
    <message>
        <source>what follows misses</source>
        <translation>qué pasa si no se alcanza</translation>
    </message>
    <message>
        <source>what it follows</source>
        <translation>a qué sigue</translation>
    </message>
    <message>
        <source>when it steps</source>
        <translation>cuándo da el paso</translation>
    </message>
</context>
<context>
    <name>RuleExtras</name>
    <message>
        <source>% of body mass more</source>
        <translation>% de la masa corporal</translation>
    </message>
    <message>
        <source>A harder variation is at least</source>
        <translation>Una variación más difícil suma al menos</translation>
    </message>
    <message>
        <source>At most so many days a week</source>
        <translation>Como mucho tantos días por semana</translation>
    </message>
    <message>
        <source>One more day a week after</source>
        <translation>Un día más por semana tras</translation>
    </message>
    <message>
        <source>One more day a week after so many steps</source>
        <translation>Un día más por semana tras tantos pasos</translation>
    </message>
    <message>
        <source>One more day a week after so many weeks</source>
        <translation>Un día más por semana tras tantas semanas</translation>
    </message>
    <message>
        <source>Smallest step of the variation, in percent of body mass</source>
        <translation>Paso mínimo de la variación, en porcentaje de la masa corporal</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>one more day a week</source>
        <translation>un día más por semana</translation>
    </message>
    <message>
        <source>smallest step</source>
        <translation>paso mínimo</translation>
    </message>
    <message>
        <source>steps or</source>
        <translation>pasos o</translation>
    </message>
    <message>
        <source>weeks, up to</source>
        <translation>semanas, hasta</translation>
    </message>
</context>
<context>
    <name>Rules</name>
    <message>
        <source>All sets together reach a total, however they fall; then it gets harder.</source>
        <translation>Todas las series juntas llegan a un total, se repartan como se repartan; luego se hace más difícil.</translation>
    </message>
    <message>
        <source>Each repetition gets slower first, then there are more, then it gets harder.</source>
        <translation>Cada repetición se hace primero más lenta, luego hay más, luego se hace más difícil.</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Isometría</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Nothing grows: sets, repetitions and load stay until you change them.</source>
        <translation>Nada crece: series, repeticiones y carga quedan hasta que se cambien.</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Repeticiones</translation>
    </message>
    <message>
        <source>Repetitions grow first, then a set is added, then the load takes a step.</source>
        <translation>Primero crecen las repeticiones, luego se añade una serie, luego la carga da un paso.</translation>
    </message>
    <message>
        <source>Repetitions grow to the top of the range, then the load takes a step.</source>
        <translation>Las repeticiones crecen hasta el tope del rango; luego la carga da un paso.</translation>
    </message>
    <message>
        <source>Repetitions grow to the top of the range, then the variation gets harder.</source>
        <translation>Las repeticiones crecen hasta el tope del rango; luego la variación se hace más difícil.</translation>
    </message>
    <message>
        <source>Seconds grow to the top of the range, then the load takes a step.</source>
        <translation>Los segundos crecen hasta el tope del rango; luego la carga da un paso.</translation>
    </message>
    <message>
        <source>Seconds grow to the top of the range, then the variation gets harder.</source>
        <translation>Los segundos crecen hasta el tope del rango; luego la variación se hace más difícil.</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Series</translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>The same sets and repetitions; the load grows each time all are done.</source>
        <translation>Las mismas series y repeticiones; la carga crece cada vez que se hacen todas.</translation>
    </message>
    <message>
        <source>Total repetitions</source>
        <translation>Repeticiones totales</translation>
    </message>
    <message>
        <source>Variation</source>
        <translation>Variación</translation>
    </message>
    <message>
        <source>What stands first grows first; the next one when it is full.</source>
        <translation>Lo primero de la lista crece primero; lo siguiente, cuando está lleno.</translation>
    </message>
    <message>
        <source>a rule of your own</source>
        <translation>una regla propia</translation>
    </message>
    <message>
        <source>a top set, then lighter</source>
        <translation>una serie fuerte, luego más ligeras</translation>
    </message>
    <message>
        <source>a total, split freely</source>
        <translation>un total, a repartir libremente</translation>
    </message>
    <message>
        <source>all alike</source>
        <translation>todas iguales</translation>
    </message>
    <message>
        <source>all sets are done as asked</source>
        <translation>todas las series se hacen como se pide</translation>
    </message>
    <message>
        <source>ascending to the last</source>
        <translation>subiendo hasta la última</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>fija</translation>
    </message>
    <message>
        <source>hold, then a harder variation</source>
        <translation>isometría, luego variación más difícil</translation>
    </message>
    <message>
        <source>hold, then load</source>
        <translation>isometría, luego carga</translation>
    </message>
    <message>
        <source>linear loading</source>
        <translation>carga lineal</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>matches the demand</source>
        <translation>iguala la exigencia</translation>
    </message>
    <message>
        <source>one more is left in reserve than meant</source>
        <translation>queda una más en reserva de lo previsto</translation>
    </message>
    <message>
        <source>repetitions</source>
        <translation>repeticiones</translation>
    </message>
    <message>
        <source>repetitions, sets, then load</source>
        <translation>repeticiones, series, luego carga</translation>
    </message>
    <message>
        <source>repetitions, then a harder variation</source>
        <translation>repeticiones, luego variación más difícil</translation>
    </message>
    <message>
        <source>repetitions, then load</source>
        <translation>repeticiones, luego carga</translation>
    </message>
    <message>
        <source>slow tempo first</source>
        <translation>primero tempo lento</translation>
    </message>
    <message>
        <source>starts again</source>
        <translation>vuelve a empezar</translation>
    </message>
    <message>
        <source>stays</source>
        <translation>se queda</translation>
    </message>
    <message>
        <source>the last set goes over</source>
        <translation>la última serie se pasa</translation>
    </message>
    <message>
        <source>the total is reached</source>
        <translation>se llega al total</translation>
    </message>
    <message>
        <source>total repetitions</source>
        <translation>repeticiones totales</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>variación</translation>
    </message>
</context>
<context>
    <name>SafeKeeping</name>
    <message>
        <source>1 other fact goes, comes back or changes</source>
        <translation>1 dato más desaparece, vuelve o cambia</translation>
    </message>
    <message>
        <source>1 session</source>
        <translation>1 sesión</translation>
    </message>
    <message>
        <source>1 trainee</source>
        <translation>1 atleta</translation>
    </message>
    <message>
        <source>Going back to it would change:</source>
        <translation>Volver a ella cambiaría:</translation>
    </message>
    <message>
        <source>In it: {trainees}, {sessions}, the last of {day}.</source>
        <translation>Contiene: {trainees}, {sessions}, la última del {day}.</translation>
    </message>
    <message>
        <source>In it: {trainees}, {sessions}.</source>
        <translation>Contiene: {trainees}, {sessions}.</translation>
    </message>
    <message>
        <source>It holds the same as the present file.</source>
        <translation>Contiene lo mismo que el archivo actual.</translation>
    </message>
    <message>
        <source>Programs change back.</source>
        <translation>Los programas vuelven a cambiar.</translation>
    </message>
    <message>
        <source>The present file cannot be read, so it cannot be compared with it.</source>
        <translation>El archivo actual no se puede leer, así que no se puede comparar.</translation>
    </message>
    <message>
        <source>{count} other facts go, come back or change</source>
        <translation>{count} datos más desaparecen, vuelven o cambian</translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation>{count} sesiones</translation>
    </message>
    <message>
        <source>{count} trainees</source>
        <translation>{count} atletas</translation>
    </message>
    <message>
        <source>{sessions} as they were before</source>
        <translation>{sessions} quedan como antes</translation>
    </message>
    <message>
        <source>{sessions} come back</source>
        <translation>{sessions} vuelven</translation>
    </message>
    <message>
        <source>{sessions} lost</source>
        <translation>{sessions} se pierden</translation>
    </message>
</context>
<context>
    <name>SafeKeepingPanel</name>
    <message>
        <source>A copy of everything is made on closing, and kept for the last 7 days, 4 weeks and 12 months. The copies lie in {folder}. What is there now is copied before anything is put in its place.</source>
        <translation>Al cerrar se hace una copia de todo, y se conserva durante los últimos 7 días, 4 semanas y 12 meses. Las copias están en {folder}. Lo que hay ahora se copia antes de poner nada en su lugar.</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Copias de seguridad</translation>
    </message>
    <message>
        <source>Backups, the newest first</source>
        <translation>Copias de seguridad, la más reciente primero</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Go back to this backup</source>
        <translation>Volver a esta copia de seguridad</translation>
    </message>
    <message>
        <source>There is no backup yet.</source>
        <translation>Aún no hay copias de seguridad.</translation>
    </message>
</context>
<context>
    <name>Sentences</name>
    <message>
        <source>&quot;version&quot; is a whole number from 1, not {found!r}</source>
        <translation>&quot;version&quot; es un número entero desde 1, no {found!r}</translation>
    </message>
    <message>
        <source>1 to 50 sets, not {sets} - at `{path}.start.sets`</source>
        <translation>1 a 50 series, no {sets} - en `{path}.start.sets`</translation>
    </message>
    <message>
        <source>1 to {most_days} days a week, not {days}</source>
        <translation>1 a {most_days} días por semana, no {days}</translation>
    </message>
    <message>
        <source>; near it are {names}</source>
        <translation>; se parecen {names}</translation>
    </message>
    <message>
        <source>A passphrase has at least {least_letters} letters, signs or spaces between them.</source>
        <translation>Una contraseña tiene al menos {least_letters} letras, signos o espacios entre ellos.</translation>
    </message>
    <message>
        <source>A {name} cannot be kept or removed by itself.</source>
        <translation>{name} no se puede guardar ni quitar por separado.</translation>
    </message>
    <message>
        <source>Change the one that is there, or choose another.</source>
        <translation>Cambiar lo que ya está, o elegir otro.</translation>
    </message>
    <message>
        <source>Check that its folder exists, that you may write there and that the disk is not full.</source>
        <translation>Comprobar que la carpeta existe, que se puede escribir en ella y que el disco no está lleno.</translation>
    </message>
    <message>
        <source>Check the disk.</source>
        <translation>Comprobar el disco.</translation>
    </message>
    <message>
        <source>Check the name, or make a new data file.</source>
        <translation>Comprobar el nombre, o crear un archivo de datos nuevo.</translation>
    </message>
    <message>
        <source>Choose a file that was written as everything.</source>
        <translation>Elegir un archivo escrito con todo.</translation>
    </message>
    <message>
        <source>Choose another backup.</source>
        <translation>Elegir otra copia de seguridad.</translation>
    </message>
    <message>
        <source>Choose another folder for backups.</source>
        <translation>Elegir otra carpeta para las copias de seguridad.</translation>
    </message>
    <message>
        <source>Choose another name for the copy.</source>
        <translation>Elegir otro nombre para la copia.</translation>
    </message>
    <message>
        <source>Data in memory belong to the thread that made them.</source>
        <translation>Los datos en memoria pertenecen al hilo que los creó.</translation>
    </message>
    <message>
        <source>Do not go on with it; open the latest backup.</source>
        <translation>No seguir con él; abrir la copia de seguridad más reciente.</translation>
    </message>
    <message>
        <source>Drafted for {level}, {weeks} weeks, {minutes} minutes a session at most. {first}; repetitions or seconds grow before load or variation. Starts are light on purpose: set each trainee&apos;s own, or put an assessment first. {easier} The ranges are common practice. {caution}</source>
        <translation>Borrador para {level}, {weeks} semanas, {minutes} minutos por sesión como mucho. {first}; las repeticiones o los segundos crecen antes que la carga o la variación. Los inicios son ligeros a propósito: fijar el de cada atleta, o hacer antes una evaluación. {easier} Los rangos son práctica habitual. {caution}</translation>
    </message>
    <message>
        <source>Each record needs an id and a revision from 1 on; see {name}[{place}].</source>
        <translation>Cada registro necesita un id y una revisión desde 1; véase {name}[{place}].</translation>
    </message>
    <message>
        <source>Every sixth week is a deload.</source>
        <translation>Cada sexta semana es de descarga.</translation>
    </message>
    <message>
        <source>Everybody in this file is on the roster already.</source>
        <translation>Todos los de este archivo ya están en la lista.</translation>
    </message>
    <message>
        <source>File exists</source>
        <translation>El archivo ya existe</translation>
    </message>
    <message>
        <source>File too large</source>
        <translation>El archivo es demasiado grande</translation>
    </message>
    <message>
        <source>Five days</source>
        <translation>Cinco días</translation>
    </message>
    <message>
        <source>For healthy people: whoever has a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Para personas sanas: con una enfermedad, dolor, una lesión reciente o un cuestionario de salud dudoso hace falta antes la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>Four days</source>
        <translation>Cuatro días</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>Viernes</translation>
    </message>
    <message>
        <source>Give the passphrase.</source>
        <translation>Dar la contraseña.</translation>
    </message>
    <message>
        <source>Give {value}.</source>
        <translation>Dar {value}.</translation>
    </message>
    <message>
        <source>Go back to a backup.</source>
        <translation>Volver a una copia de seguridad.</translation>
    </message>
    <message>
        <source>Go back to the latest backup.</source>
        <translation>Volver a la copia de seguridad más reciente.</translation>
    </message>
    <message>
        <source>Holds and harder variations come first</source>
        <translation>Las isometrías y las variaciones más difíciles van primero</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>Error al leer o escribir en el disco</translation>
    </message>
    <message>
        <source>Install it: pip install &quot;rungwise[passphrase]&quot;</source>
        <translation>Instalarla: pip install &quot;rungwise[passphrase]&quot;</translation>
    </message>
    <message>
        <source>Install the newer version of the program, or open a backup.</source>
        <translation>Instalar la versión más nueva del programa, o abrir una copia de seguridad.</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>Es una carpeta</translation>
    </message>
    <message>
        <source>It cannot be written without the trainee: {problems}</source>
        <translation>No se puede escribir sin el atleta: {problems}</translation>
    </message>
    <message>
        <source>It was left as it is.</source>
        <translation>Se dejó como está.</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>Lunes</translation>
    </message>
    <message>
        <source>Name a data file.</source>
        <translation>Nombrar un archivo de datos.</translation>
    </message>
    <message>
        <source>Name a new data file; everything of the file goes in there.</source>
        <translation>Nombrar un archivo de datos nuevo; todo lo del archivo va allí.</translation>
    </message>
    <message>
        <source>No days</source>
        <translation>Ningún día</translation>
    </message>
    <message>
        <source>No deload is planned: for novices it is the coach&apos;s call.</source>
        <translation>No hay descarga planeada: con principiantes la decide el entrenador.</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>No queda espacio en el disco</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>No existe ese archivo ni esa carpeta</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>No se cambió nada.</translation>
    </message>
    <message>
        <source>Nothing was changed. Check the disk.</source>
        <translation>No se cambió nada. Comprobar el disco.</translation>
    </message>
    <message>
        <source>Nothing was changed. Open a backup instead.</source>
        <translation>No se cambió nada. En su lugar, abrir una copia de seguridad.</translation>
    </message>
    <message>
        <source>One day</source>
        <translation>Un día</translation>
    </message>
    <message>
        <source>Open the latest backup.</source>
        <translation>Abrir la copia de seguridad más reciente.</translation>
    </message>
    <message>
        <source>Operation not permitted</source>
        <translation>Operación no permitida</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>Permiso denegado</translation>
    </message>
    <message>
        <source>Read it again and repeat the change. Nothing was overwritten.</source>
        <translation>Leerlo de nuevo y repetir el cambio. No se sobrescribió nada.</translation>
    </message>
    <message>
        <source>Read them again and repeat the change. Nothing was overwritten.</source>
        <translation>Leerlos de nuevo y repetir el cambio. No se sobrescribió nada.</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>El disco es de solo lectura</translation>
    </message>
    <message>
        <source>Remove or correct those sessions first.</source>
        <translation>Antes hay que quitar o corregir esas sesiones.</translation>
    </message>
    <message>
        <source>Retire the exercise instead; its record stays.</source>
        <translation>En su lugar, retirar el ejercicio; su registro queda.</translation>
    </message>
    <message>
        <source>SQLite {there} is too old: the data need {least} or newer.</source>
        <translation>SQLite {there} es demasiado antiguo: los datos necesitan {least} o más nuevo.</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>Sábado</translation>
    </message>
    <message>
        <source>Save the {what} first.</source>
        <translation>Antes hay que guardar: {what}.</translation>
    </message>
    <message>
        <source>Several words that you can remember are good.</source>
        <translation>Van bien varias palabras que se puedan recordar.</translation>
    </message>
    <message>
        <source>Six days</source>
        <translation>Seis días</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>Domingo</translation>
    </message>
    <message>
        <source>The coach&apos;s settings were changed elsewhere since they were read.</source>
        <translation>Los ajustes se cambiaron en otro sitio desde que se leyeron.</translation>
    </message>
    <message>
        <source>The factor on sets is above 0 and at most 1, not {factor}.</source>
        <translation>El factor de las series es mayor que 0 y como mucho 1, no {factor}.</translation>
    </message>
    <message>
        <source>The folder {folder} cannot be made: {strerror}.</source>
        <translation>No se puede crear la carpeta {folder}: {strerror}.</translation>
    </message>
    <message>
        <source>The key of an exercise stays as it is: {key!r}.</source>
        <translation>La clave de un ejercicio queda como está: {key!r}.</translation>
    </message>
    <message>
        <source>The large exercises come first</source>
        <translation>Los ejercicios grandes van primero</translation>
    </message>
    <message>
        <source>The last day, {last}, is before the first, {first}.</source>
        <translation>El último día, {last}, es anterior al primero, {first}.</translation>
    </message>
    <message>
        <source>The library for files with a passphrase (sqlcipher3) is not installed.</source>
        <translation>La biblioteca para archivos con contraseña (sqlcipher3) no está instalada.</translation>
    </message>
    <message>
        <source>The line of {exercise} belongs to another trainee.</source>
        <translation>La línea de {exercise} pertenece a otro atleta.</translation>
    </message>
    <message>
        <source>The line of {exercise} was trained in sessions: {count}.</source>
        <translation>La línea de {exercise} se entrenó en sesiones: {count}.</translation>
    </message>
    <message>
        <source>The order on a day counts from 0, not {entry}.</source>
        <translation>El orden en un día se cuenta desde 0, no {entry}.</translation>
    </message>
    <message>
        <source>The passphrase does not open {file}.</source>
        <translation>La contraseña no abre {file}.</translation>
    </message>
    <message>
        <source>The record breaks a rule of the data: {origin}.</source>
        <translation>El registro rompe una regla de los datos: {origin}.</translation>
    </message>
    <message>
        <source>The record holds what cannot be kept: {error}.</source>
        <translation>El registro contiene algo que no se puede guardar: {error}.</translation>
    </message>
    <message>
        <source>The span ends before it begins: choose a later last day.</source>
        <translation>El periodo termina antes de empezar: elegir un último día posterior.</translation>
    </message>
    <message>
        <source>The uncertainty of a start is a fraction from 0 to 1, not {plus_minus}.</source>
        <translation>La incertidumbre de un inicio es una fracción de 0 a 1, no {plus_minus}.</translation>
    </message>
    <message>
        <source>There are records in the data file already.</source>
        <translation>Ya hay registros en el archivo de datos.</translation>
    </message>
    <message>
        <source>There is already {record}.</source>
        <translation>Ya existe {record}.</translation>
    </message>
    <message>
        <source>There is no exercise called {key!r}.</source>
        <translation>No hay ningún ejercicio llamado {key!r}.</translation>
    </message>
    <message>
        <source>There is no file {path}.</source>
        <translation>No existe el archivo {path}.</translation>
    </message>
    <message>
        <source>There is no {kind} with the number {identity}.</source>
        <translation>No existe con el número {identity}: {kind}.</translation>
    </message>
    <message>
        <source>There is no {what} called {value!r}.</source>
        <translation>No existe con el nombre {value!r}: {what}.</translation>
    </message>
    <message>
        <source>There is no {what} with the number {value}.</source>
        <translation>No existe con el número {value}: {what}.</translation>
    </message>
    <message>
        <source>This {kind} is already there.</source>
        <translation>Ya existe: {kind}.</translation>
    </message>
    <message>
        <source>This {kind} was changed elsewhere since it was read.</source>
        <translation>Cambiado en otro sitio desde que se leyó: {kind}.</translation>
    </message>
    <message>
        <source>This {kind} was removed elsewhere since it was read.</source>
        <translation>Quitado en otro sitio desde que se leyó: {kind}.</translation>
    </message>
    <message>
        <source>Three days</source>
        <translation>Tres días</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>Jueves</translation>
    </message>
    <message>
        <source>Try it again. If it is right, the file is damaged: go back to a backup.</source>
        <translation>Probar de nuevo. Si es correcta, el archivo está dañado: volver a una copia de seguridad.</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>Martes</translation>
    </message>
    <message>
        <source>Two days</source>
        <translation>Dos días</translation>
    </message>
    <message>
        <source>Use a Python that brings a newer SQLite.</source>
        <translation>Usar un Python que traiga un SQLite más nuevo.</translation>
    </message>
    <message>
        <source>Version {version} cannot be reached: rows of {tables} refer to missing ones.</source>
        <translation>No se puede llegar a la versión {version}: filas de {tables} remiten a otras que faltan.</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>Miércoles</translation>
    </message>
    <message>
        <source>What was written in place of the file is not the same: {listed}</source>
        <translation>Lo escrito en lugar del archivo no es lo mismo: {listed}</translation>
    </message>
    <message>
        <source>a body mass for {day}</source>
        <translation>una masa corporal del {day}</translation>
    </message>
    <message>
        <source>a body mass is 10 to 500 kg (22 to 1102 lb)</source>
        <translation>una masa corporal va de 10 a 500 kg (22 a 1102 lb)</translation>
    </message>
    <message>
        <source>a deload every 1 to 52 weeks, or null - at `$.program.deload_every`</source>
        <translation>una descarga cada 1 a 52 semanas, o null - en `$.program.deload_every`</translation>
    </message>
    <message>
        <source>a following line asks above 0 to 100 %, not {percent}</source>
        <translation>una línea que sigue a otra pide más de 0 y hasta 100 %, no {percent}</translation>
    </message>
    <message>
        <source>a line of {exercise} called {name!r}</source>
        <translation>una línea de {exercise} llamada {name!r}</translation>
    </message>
    <message>
        <source>a list of equipment from {day}</source>
        <translation>una lista de equipo desde el {day}</translation>
    </message>
    <message>
        <source>a load {times} times that of the other lines: is a decimal mark missing?</source>
        <translation>una carga {times} veces la de las demás filas: ¿falta un signo decimal?</translation>
    </message>
    <message>
        <source>a load, but neither repetitions nor seconds</source>
        <translation>una carga, pero ni repeticiones ni segundos</translation>
    </message>
    <message>
        <source>a meaning of {text!r}</source>
        <translation>un significado de {text!r}</translation>
    </message>
    <message>
        <source>a novice</source>
        <translation>nivel principiante</translation>
    </message>
    <message>
        <source>a phase lasts 1 to 104 weeks, not {weeks} - at `{path}.weeks`</source>
        <translation>una fase dura de 1 a 104 semanas, no {weeks} - en `{path}.weeks`</translation>
    </message>
    <message>
        <source>a program called {name}</source>
        <translation>un programa llamado {name}</translation>
    </message>
    <message>
        <source>a program is assigned from {start} on already; remove that or start later</source>
        <translation>ya hay un programa asignado desde el {start}; quitarlo o empezar más tarde</translation>
    </message>
    <message>
        <source>a program needs a name - at `$.program.name`</source>
        <translation>un programa necesita un nombre - en `$.program.name`</translation>
    </message>
    <message>
        <source>a program needs at least one phase - at `$.program.phases`</source>
        <translation>un programa necesita al menos una fase - en `$.program.phases`</translation>
    </message>
    <message>
        <source>a rest is 0 to 3600 seconds - at `{path}.rest_s`</source>
        <translation>un descanso va de 0 a 3600 segundos - en `{path}.rest_s`</translation>
    </message>
    <message>
        <source>a rule counts repetitions or seconds held, not both</source>
        <translation>una regla cuenta repeticiones o segundos, no ambos</translation>
    </message>
    <message>
        <source>a start above 0 to 100 % of the maximum, not {start_percent}</source>
        <translation>un inicio de más de 0 y hasta 100 % del máximo, no {start_percent}</translation>
    </message>
    <message>
        <source>a trainee called {name}</source>
        <translation>un atleta llamado {name}</translation>
    </message>
    <message>
        <source>a variable stands twice in the rule; each may stand once</source>
        <translation>una variable está dos veces en la regla; cada una puede estar una vez</translation>
    </message>
    <message>
        <source>a variation is named, not numbered</source>
        <translation>una variación se nombra, no se numera</translation>
    </message>
    <message>
        <source>a weekday is 0 (Monday) to 6 or null, not {weekday} - at `{at}.weekday`</source>
        <translation>un día de la semana va de 0 (lunes) a 6, o null, no {weekday} - en `{at}.weekday`</translation>
    </message>
    <message>
        <source>a well-equipped room</source>
        <translation>sala bien equipada</translation>
    </message>
    <message>
        <source>absence</source>
        <translation>ausencia</translation>
    </message>
    <message>
        <source>activity</source>
        <translation>actividad</translation>
    </message>
    <message>
        <source>an activity needs minutes and effort (0 to 10)</source>
        <translation>una actividad necesita minutos y esfuerzo (0 a 10)</translation>
    </message>
    <message>
        <source>an advanced trainee</source>
        <translation>nivel avanzado</translation>
    </message>
    <message>
        <source>an estimate needs 1 to 15 repetitions, those in reserve included</source>
        <translation>una estimación necesita de 1 a 15 repeticiones, contando las que quedan en reserva</translation>
    </message>
    <message>
        <source>an exercise with the key {key!r}</source>
        <translation>un ejercicio con la clave {key!r}</translation>
    </message>
    <message>
        <source>an intermediate trainee</source>
        <translation>nivel intermedio</translation>
    </message>
    <message>
        <source>another activity and an exercise cannot share a line</source>
        <translation>otra actividad y un ejercicio no pueden compartir una fila</translation>
    </message>
    <message>
        <source>another exercise was done</source>
        <translation>se hizo otro ejercicio</translation>
    </message>
    <message>
        <source>arms and calves</source>
        <translation>brazos y pantorrillas</translation>
    </message>
    <message>
        <source>assignment</source>
        <translation>asignación</translation>
    </message>
    <message>
        <source>at least one repetition or second - at `{path}.start`</source>
        <translation>al menos una repetición o un segundo - en `{path}.start`</translation>
    </message>
    <message>
        <source>avoid {text!r}: no exercise has that; name an exercise, a muscle, or a pattern ({allowed})</source>
        <translation>evitar {text!r}: ningún ejercicio lo tiene; nombrar un ejercicio, un músculo o un patrón ({allowed})</translation>
    </message>
    <message>
        <source>back off by more than 0 and at most 50 %, not {percent}</source>
        <translation>retroceder más de 0 y como mucho 50 %, no {percent}</translation>
    </message>
    <message>
        <source>barbell, bench and bar</source>
        <translation>barra, banco y dominadas</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>masa corporal</translation>
    </message>
    <message>
        <source>bodyweight, but the exercise is loaded by weights</source>
        <translation>peso corporal, pero el ejercicio se carga con pesos</translation>
    </message>
    <message>
        <source>broken quotation, the rest was not read ({error})</source>
        <translation>comillas sin cerrar, el resto no se leyó ({error})</translation>
    </message>
    <message>
        <source>carry</source>
        <translation>transporte</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>descarga</translation>
    </message>
    <message>
        <source>dismissed caution</source>
        <translation>aviso apartado</translation>
    </message>
    <message>
        <source>dumbbells and a bench</source>
        <translation>mancuernas y banco</translation>
    </message>
    <message>
        <source>each weekday may be named once</source>
        <translation>cada día de la semana se nombra una sola vez</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>equipo</translation>
    </message>
    <message>
        <source>exercise</source>
        <translation>ejercicio</translation>
    </message>
    <message>
        <source>frequency: 1 to 7 days a week, not {most}</source>
        <translation>frecuencia: 1 a 7 días por semana, no {most}</translation>
    </message>
    <message>
        <source>frequency: give a number of steps or of weeks</source>
        <translation>frecuencia: dar un número de pasos o de semanas</translation>
    </message>
    <message>
        <source>give reps or hold_s, one of them - at `{path}.start`</source>
        <translation>dar reps o hold_s, uno de los dos - en `{path}.start`</translation>
    </message>
    <message>
        <source>goal</source>
        <translation>meta</translation>
    </message>
    <message>
        <source>held back with line {bad_parts}, {why_held}</source>
        <translation>retenida con la fila {bad_parts}, {why_held}</translation>
    </message>
    <message>
        <source>hinge</source>
        <translation>bisagra</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>isometría</translation>
    </message>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>line 1 must name the columns, and there is no {missing} among them: a log has the columns {columns}</source>
        <translation>la fila 1 debe nombrar las columnas, y entre ellas falta {missing}: un registro tiene las columnas {columns}</translation>
    </message>
    <message>
        <source>line {line} says {before}</source>
        <translation>la fila {line} dice {before}</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>lunge</source>
        <translation>zancada</translation>
    </message>
    <message>
        <source>misses in a row: 1 to 5, not {misses}</source>
        <translation>veces seguidas sin alcanzar: 1 a 5, no {misses}</translation>
    </message>
    <message>
        <source>no date</source>
        <translation>sin fecha</translation>
    </message>
    <message>
        <source>no date: write it as 2026-11-30</source>
        <translation>sin fecha: escribirla como 2026-11-30</translation>
    </message>
    <message>
        <source>no equipment</source>
        <translation>sin equipo</translation>
    </message>
    <message>
        <source>no load is light enough: the lightest is {lowest:g} kg</source>
        <translation>ninguna carga es bastante ligera: la menor es {lowest:g} kg</translation>
    </message>
    <message>
        <source>no load: read as none</source>
        <translation>sin carga: leída como ninguna</translation>
    </message>
    <message>
        <source>no repetitions and no seconds: what was done?</source>
        <translation>ni repeticiones ni segundos: ¿qué se hizo?</translation>
    </message>
    <message>
        <source>no unit: write kg or lb into the column &apos;unit&apos;</source>
        <translation>sin unidad: escribir kg o lb en la columna &apos;unit&apos;</translation>
    </message>
    <message>
        <source>nothing to record in this line</source>
        <translation>nada que registrar en esta fila</translation>
    </message>
    <message>
        <source>own equipment</source>
        <translation>equipo propio</translation>
    </message>
    <message>
        <source>press</source>
        <translation>press</translation>
    </message>
    <message>
        <source>program</source>
        <translation>programa</translation>
    </message>
    <message>
        <source>pull-up</source>
        <translation>dominada</translation>
    </message>
    <message>
        <source>push</source>
        <translation>empuje</translation>
    </message>
    <message>
        <source>remembered name</source>
        <translation>nombre recordado</translation>
    </message>
    <message>
        <source>repetitions in reserve: 0 to 10, not {target_rir}</source>
        <translation>repeticiones en reserva: 0 a 10, no {target_rir}</translation>
    </message>
    <message>
        <source>repetitions or seconds, not both</source>
        <translation>repeticiones o segundos, no ambos</translation>
    </message>
    <message>
        <source>repetitions over: 1 to 10, not {over}</source>
        <translation>repeticiones de más: 1 a 10, no {over}</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>reps</translation>
    </message>
    <message>
        <source>row</source>
        <translation>remo</translation>
    </message>
    <message>
        <source>session</source>
        <translation>sesión</translation>
    </message>
    <message>
        <source>session change</source>
        <translation>cambio de sesión</translation>
    </message>
    <message>
        <source>sessions in a row: 1 to 10, not {sessions}</source>
        <translation>sesiones seguidas: 1 a 10, no {sessions}</translation>
    </message>
    <message>
        <source>set scheme: more than 0 and at most 50 %, not {percent}</source>
        <translation>relación entre series: más de 0 y como mucho 50 %, no {percent}</translation>
    </message>
    <message>
        <source>set {number} of {exercise} stands in line {line} already</source>
        <translation>la serie {number} de {exercise} ya está en la fila {line}</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>series</translation>
    </message>
    <message>
        <source>settings</source>
        <translation>ajustes</translation>
    </message>
    <message>
        <source>size</source>
        <translation>hipertrofia</translation>
    </message>
    <message>
        <source>skill</source>
        <translation>habilidad</translation>
    </message>
    <message>
        <source>so that the exercise is not judged by a part of its sets</source>
        <translation>para que el ejercicio no se valore por una parte de sus series</translation>
    </message>
    <message>
        <source>squat</source>
        <translation>sentadilla</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>fuerza</translation>
    </message>
    <message>
        <source>tempo</source>
        <translation>tempo</translation>
    </message>
    <message>
        <source>the column {cell!r} is not read</source>
        <translation>la columna {cell!r} no se lee</translation>
    </message>
    <message>
        <source>the column {cell!r} is not read; did you mean {near!r}?</source>
        <translation>la columna {cell!r} no se lee; ¿será {near!r}?</translation>
    </message>
    <message>
        <source>the column {cell!r} stands twice in the heading</source>
        <translation>la columna {cell!r} está dos veces en el encabezado</translation>
    </message>
    <message>
        <source>the effective load is not known: give a load, or the body mass</source>
        <translation>no se conoce la carga efectiva: dar una carga, o la masa corporal</translation>
    </message>
    <message>
        <source>the file is empty: the first line names the columns</source>
        <translation>el archivo está vacío: la primera fila nombra las columnas</translation>
    </message>
    <message>
        <source>the rest from line {line} on was not read: broken quotation ({error})</source>
        <translation>el resto desde la fila {line} no se leyó: comillas sin cerrar ({error})</translation>
    </message>
    <message>
        <source>the rule counts repetitions: test with repetitions</source>
        <translation>la regla cuenta repeticiones: probar con repeticiones</translation>
    </message>
    <message>
        <source>the rule counts {counted}, the start does not - at `{path}.rule.ranges`</source>
        <translation>la regla cuenta {counted}, el inicio no - en `{path}.rule.ranges`</translation>
    </message>
    <message>
        <source>the variation tested is not on this trainee&apos;s scale</source>
        <translation>la variación probada no está en la escala de este atleta</translation>
    </message>
    <message>
        <source>there is another program called {name!r} already; rename one of the two</source>
        <translation>ya hay otro programa llamado {name!r}; cambiar el nombre de uno de los dos</translation>
    </message>
    <message>
        <source>there is no exercise called {name!r}{hint}</source>
        <translation>no hay ningún ejercicio llamado {name!r}{hint}</translation>
    </message>
    <message>
        <source>there is no program {program!r}: its sessions are taken without it</source>
        <translation>no hay ningún programa {program!r}: sus sesiones se toman sin él</translation>
    </message>
    <message>
        <source>there is no trainee called {name!r}{hint}</source>
        <translation>no hay ningún atleta llamado {name!r}{hint}</translation>
    </message>
    <message>
        <source>these exercises are not in the catalogue: {listed}</source>
        <translation>estos ejercicios no están en el catálogo: {listed}</translation>
    </message>
    <message>
        <source>this is no JSON ({error})</source>
        <translation>esto no es JSON ({error})</translation>
    </message>
    <message>
        <source>this is no text file: a training log is a table of text in UTF-8</source>
        <translation>esto no es un archivo de texto: un registro de entrenamiento es una tabla de texto en UTF-8</translation>
    </message>
    <message>
        <source>this is no {schema} file: it does not begin with &quot;schema&quot;: &quot;{schema}&quot;</source>
        <translation>esto no es un archivo {schema}: no empieza con &quot;schema&quot;: &quot;{schema}&quot;</translation>
    </message>
    <message>
        <source>this {schema} file has version {found}; this program reads up to {version}: update the program</source>
        <translation>este archivo {schema} tiene la versión {found}; este programa lee hasta la {version}: actualizar el programa</translation>
    </message>
    <message>
        <source>trainee</source>
        <translation>atleta</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation>tronco</translation>
    </message>
    <message>
        <source>unknown field `{key}` at `{path}`: allowed are {allowed}</source>
        <translation>campo desconocido `{key}` en `{path}`: se admite {allowed}</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>variación</translation>
    </message>
    <message>
        <source>variation: give easiest and hardest, not floor and ceiling</source>
        <translation>variación: dar la más fácil y la más difícil, no mínimo y tope</translation>
    </message>
    <message>
        <source>weekdays are 0 (Monday) to 6 (Sunday)</source>
        <translation>los días de la semana van de 0 (lunes) a 6 (domingo)</translation>
    </message>
    <message>
        <source>what was copied is no part of a program: {error}</source>
        <translation>lo copiado no es parte de un programa: {error}</translation>
    </message>
    <message>
        <source>which exercise?</source>
        <translation>¿qué ejercicio?</translation>
    </message>
    <message>
        <source>which exercise? - at `{path}.exercise`</source>
        <translation>¿qué ejercicio? - en `{path}.exercise`</translation>
    </message>
    <message>
        <source>who? choose a column, or whose all lines are</source>
        <translation>¿quién? elegir una columna, o de quién son todas las filas</translation>
    </message>
    <message>
        <source>who? the line names no trainee</source>
        <translation>¿quién? la fila no nombra a nadie</translation>
    </message>
    <message>
        <source>{cells} cells for {columns} columns: put numbers and texts that hold the separator into double quotation marks</source>
        <translation>{cells} celdas para {columns} columnas: poner entre comillas dobles los números y textos que contengan el separador</translation>
    </message>
    <message>
        <source>{days} days a week need as many weekdays, not {value}</source>
        <translation>{days} días por semana necesitan esos mismos días de la semana, no {value}</translation>
    </message>
    <message>
        <source>{days}, {equipment}: {aim}</source>
        <translation>{days}, {equipment}: {aim}</translation>
    </message>
    <message>
        <source>{equation!r} is no equation: allowed are {listed}.</source>
        <translation>{equation!r} no es una ecuación: se admite {listed}.</translation>
    </message>
    <message>
        <source>{exercise}</source>
        <translation>{exercise}</translation>
    </message>
    <message>
        <source>{exercise} is already recorded on {day}, with other sets; change it in the session itself</source>
        <translation>{exercise} ya está registrado el {day}, con otras series; cambiarlo en la propia sesión</translation>
    </message>
    <message>
        <source>{exercise} is counted: give repetitions, not seconds</source>
        <translation>{exercise} se cuenta: dar repeticiones, no segundos</translation>
    </message>
    <message>
        <source>{exercise} is held: give seconds, not repetitions</source>
        <translation>{exercise} se aguanta: dar segundos, no repeticiones</translation>
    </message>
    <message>
        <source>{file} cannot be read or written: {why}.</source>
        <translation>{file} no se puede leer o escribir: {why}.</translation>
    </message>
    <message>
        <source>{file} changed on the disk though nobody wrote to it.</source>
        <translation>{file} cambió en el disco sin que nadie escribiera en él.</translation>
    </message>
    <message>
        <source>{file} has a passphrase (or it is no data file of this program).</source>
        <translation>{file} tiene contraseña (o no es un archivo de datos de este programa).</translation>
    </message>
    <message>
        <source>{file} has more than {most_lines} lines: split it</source>
        <translation>{file} tiene más de {most_lines} filas: dividirlo</translation>
    </message>
    <message>
        <source>{file} holds no sheet with cells</source>
        <translation>{file} no contiene ninguna hoja con celdas</translation>
    </message>
    <message>
        <source>{file} is a data file in use: a copy in its place would destroy it.</source>
        <translation>{file} es un archivo de datos en uso: una copia en su lugar lo destruiría.</translation>
    </message>
    <message>
        <source>{file} is a workbook of an old kind, or locked by a password: save it as .xlsx without a password, or as CSV</source>
        <translation>{file} es un libro de cálculo antiguo, o bloqueado con contraseña: guardarlo como .xlsx sin contraseña, o como CSV</translation>
    </message>
    <message>
        <source>{file} is an archive, not a workbook (.xlsx)</source>
        <translation>{file} es un archivo comprimido, no un libro de cálculo (.xlsx)</translation>
    </message>
    <message>
        <source>{file} is damaged (it changed on the disk though nobody wrote to it); no copy was made of it.</source>
        <translation>{file} está dañado (cambió en el disco sin que nadie escribiera en él); no se hizo copia de él.</translation>
    </message>
    <message>
        <source>{file} is damaged ({problems}); no copy was made of it.</source>
        <translation>{file} está dañado ({problems}); no se hizo copia de él.</translation>
    </message>
    <message>
        <source>{file} is damaged: a value in it cannot be read.</source>
        <translation>{file} está dañado: un valor no se puede leer.</translation>
    </message>
    <message>
        <source>{file} is damaged: its beginning is missing.</source>
        <translation>{file} está dañado: falta su principio.</translation>
    </message>
    <message>
        <source>{file} is damaged: {problems}</source>
        <translation>{file} está dañado: {problems}</translation>
    </message>
    <message>
        <source>{file} is empty</source>
        <translation>{file} está vacío</translation>
    </message>
    <message>
        <source>{file} is neither a program nor a trainee file of this program, nor a table</source>
        <translation>{file} no es un programa ni un archivo de atleta de este programa, ni una tabla</translation>
    </message>
    <message>
        <source>{file} is no table: it is neither text (CSV) nor a workbook (.xlsx)</source>
        <translation>{file} no es una tabla: no es texto (CSV) ni libro de cálculo (.xlsx)</translation>
    </message>
    <message>
        <source>{file} is no text</source>
        <translation>{file} no es un texto</translation>
    </message>
    <message>
        <source>{file} is no training log: {size} MB are too many</source>
        <translation>{file} no es un registro de entrenamiento: {size} MB son demasiados</translation>
    </message>
    <message>
        <source>{file} is not a data file of this program.</source>
        <translation>{file} no es un archivo de datos de este programa.</translation>
    </message>
    <message>
        <source>{file} is too large for a {schema} file</source>
        <translation>{file} es demasiado grande para un archivo {schema}</translation>
    </message>
    <message>
        <source>{file} is too large for notes: at most 1 MB</source>
        <translation>{file} es demasiado grande para notas: como mucho 1 MB</translation>
    </message>
    <message>
        <source>{file} is too large: {size} MB, at most 200</source>
        <translation>{file} es demasiado grande: {size} MB, como mucho 200</translation>
    </message>
    <message>
        <source>{file} unpacks to {unpacked} MB: that is no training log</source>
        <translation>{file} ocupa {unpacked} MB al descomprimirse: eso no es un registro de entrenamiento</translation>
    </message>
    <message>
        <source>{file} was written by a newer version of this program (its data have version {version}, this program knows up to {newest}).</source>
        <translation>{file} lo escribió una versión más nueva de este programa (sus datos tienen la versión {version}; este programa conoce hasta la {newest}).</translation>
    </message>
    <message>
        <source>{file}: each trainee needs a name of their own - at `$.trainees[{number}].trainee.name`</source>
        <translation>{file}: cada atleta necesita un nombre propio - en `$.trainees[{number}].trainee.name`</translation>
    </message>
    <message>
        <source>{file}: {error}</source>
        <translation>{file}: {error}</translation>
    </message>
    <message>
        <source>{grams} loads for {count} sets</source>
        <translation>{grams} cargas para {count} series</translation>
    </message>
    <message>
        <source>{kilograms:g} kg are already recorded on {day}</source>
        <translation>el {day} ya hay registrados {kilograms:g} kg</translation>
    </message>
    <message>
        <source>{least_minutes} to {most_minutes} minutes a session, not {minutes}</source>
        <translation>{least_minutes} a {most_minutes} minutos por sesión, no {minutes}</translation>
    </message>
    <message>
        <source>{listed} and no {another}</source>
        <translation>{listed} y sin {another}</translation>
    </message>
    <message>
        <source>{load_g} g is not a load: allowed is -{max_load_g} to {max_load_g} g</source>
        <translation>{load_g} g no es una carga: se admite de -{max_load_g} a {max_load_g} g</translation>
    </message>
    <message>
        <source>{match!r} is no unit: allowed are kg and lb</source>
        <translation>{match!r} no es una unidad: se admiten kg y lb</translation>
    </message>
    <message>
        <source>{name} cannot be read: {value}</source>
        <translation>{name} no se puede leer: {value}</translation>
    </message>
    <message>
        <source>{name} has more than {most_lines} lines: split it</source>
        <translation>{name} tiene más de {most_lines} filas: dividirlo</translation>
    </message>
    <message>
        <source>{name} has no training day yet; it needs at least one</source>
        <translation>{name} aún no tiene ningún día de entrenamiento; necesita al menos uno</translation>
    </message>
    <message>
        <source>{name} has no variation {text!r}{hint}</source>
        <translation>{name} no tiene la variación {text!r}{hint}</translation>
    </message>
    <message>
        <source>{name} holds declarations that no workbook needs: it is not read</source>
        <translation>{name} contiene declaraciones que ningún libro de cálculo necesita: no se lee</translation>
    </message>
    <message>
        <source>{name} is damaged: {origin}.</source>
        <translation>{name} está dañado: {origin}.</translation>
    </message>
    <message>
        <source>{name} is needed: uses as {what}: {count}.</source>
        <translation>{name} hace falta: usos como {what}: {count}.</translation>
    </message>
    <message>
        <source>{name} is there already, exactly like this.</source>
        <translation>{name} ya está, exactamente así.</translation>
    </message>
    <message>
        <source>{name}, line {number}: a cell of more than {most_letters} letters</source>
        <translation>{name}, fila {number}: una celda de más de {most_letters} letras</translation>
    </message>
    <message>
        <source>{name}, line {number}: {cells} columns; at most {most_columns} are read</source>
        <translation>{name}, fila {number}: {cells} columnas; se leen como mucho {most_columns}</translation>
    </message>
    <message>
        <source>{name}: a floor lies above the ceiling {ceiling}</source>
        <translation>{name}: un mínimo está por encima del tope {ceiling}</translation>
    </message>
    <message>
        <source>{name}: at most {most_text} characters, not {text}.</source>
        <translation>{name}: como mucho {most_text} caracteres, no {text}.</translation>
    </message>
    <message>
        <source>{name}: easiest and hardest belong to a variation</source>
        <translation>{name}: la más fácil y la más difícil son de una variación</translation>
    </message>
    <message>
        <source>{name}: every floor is at least 1</source>
        <translation>{name}: cada mínimo es al menos 1</translation>
    </message>
    <message>
        <source>{name}: give clean repetitions or seconds.</source>
        <translation>{name}: dar repeticiones limpias o segundos.</translation>
    </message>
    <message>
        <source>{name}: holds a character that is no text.</source>
        <translation>{name}: contiene un carácter que no es texto.</translation>
    </message>
    <message>
        <source>{name}: name at least one direct muscle.</source>
        <translation>{name}: nombrar al menos un músculo directo.</translation>
    </message>
    <message>
        <source>{name}: the ceiling {ceiling} is below the floor {floor}</source>
        <translation>{name}: el tope {ceiling} está por debajo del mínimo {floor}</translation>
    </message>
    <message>
        <source>{name}: the ceiling {ceiling} is not on the grid of {floor} in steps of {increment}</source>
        <translation>{name}: al tope {ceiling} no se llega desde {floor} en pasos de {increment}</translation>
    </message>
    <message>
        <source>{name}: the floor is at least 1, not {floor}</source>
        <translation>{name}: el mínimo es al menos 1, no {floor}</translation>
    </message>
    <message>
        <source>{name}: the increment is at least 1, not {increment}</source>
        <translation>{name}: el incremento es al menos 1, no {increment}</translation>
    </message>
    <message>
        <source>{name}: the side is left, right or empty, not {side!r}.</source>
        <translation>{name}: el lado es left, right o vacío, no {side!r}.</translation>
    </message>
    <message>
        <source>{name}: there is no exercise {exercise!r}</source>
        <translation>{name}: no existe el ejercicio {exercise!r}</translation>
    </message>
    <message>
        <source>{name}: there is no exercise {listed}</source>
        <translation>{name}: no existe el ejercicio {listed}</translation>
    </message>
    <message>
        <source>{name}: there is no program {program!r}; import it first</source>
        <translation>{name}: no existe el programa {program!r}; importarlo antes</translation>
    </message>
    <message>
        <source>{path} is a folder.</source>
        <translation>{path} es una carpeta.</translation>
    </message>
    <message>
        <source>{side!r}: allowed are left, right or nothing</source>
        <translation>{side!r}: se admite left, right o nada</translation>
    </message>
    <message>
        <source>{state!r}: allowed are {listed}</source>
        <translation>{state!r}: se admite {listed}</translation>
    </message>
    <message>
        <source>{text!r} has three numbers: which one is the load?</source>
        <translation>{text!r} tiene tres números: ¿cuál es la carga?</translation>
    </message>
    <message>
        <source>{text!r} is a range: one load is needed</source>
        <translation>{text!r} es un rango: hace falta una sola carga</translation>
    </message>
    <message>
        <source>{text!r} is a range: what was done?</source>
        <translation>{text!r} es un rango: ¿qué se hizo?</translation>
    </message>
    <message>
        <source>{text!r} is neither yes nor no</source>
        <translation>{text!r} no es sí ni no</translation>
    </message>
    <message>
        <source>{text!r} is no count: allowed are 5, 3x5, 5/5/4, 20 s, 0:30</source>
        <translation>{text!r} no es una cuenta: se admite 5, 3x5, 5/5/4, 20 s, 0:30</translation>
    </message>
    <message>
        <source>{text!r} is no date: write it as 2026-11-30</source>
        <translation>{text!r} no es una fecha: escribirla como 2026-11-30</translation>
    </message>
    <message>
        <source>{text!r} is no load: allowed are 62.5, 62.5 kg, 135 lb, BW, BW+10</source>
        <translation>{text!r} no es una carga: se admite 62.5, 62.5 kg, 135 lb, BW, BW+10</translation>
    </message>
    <message>
        <source>{text!r} is no number of sets</source>
        <translation>{text!r} no es un número de series</translation>
    </message>
    <message>
        <source>{text!r} is no unit: allowed are kg and lb</source>
        <translation>{text!r} no es una unidad: se admiten kg y lb</translation>
    </message>
    <message>
        <source>{text!r}: allowed are 1 to {most_sets} sets, as in 3x5</source>
        <translation>{text!r}: se admiten de 1 a {most_sets} series, como en 3x5</translation>
    </message>
    <message>
        <source>{text!r}: more than {most_sets} sets in one cell</source>
        <translation>{text!r}: más de {most_sets} series en una celda</translation>
    </message>
    <message>
        <source>{text!r}: write BW+10 for added load, BW-10 for help</source>
        <translation>{text!r}: escribir BW+10 para lastre, BW-10 para ayuda</translation>
    </message>
    <message>
        <source>{text!r}: {sets} sets, but {read} counts</source>
        <translation>{text!r}: {sets} series, pero {read} cuentas</translation>
    </message>
    <message>
        <source>{text} is a day: a spreadsheet makes one of 5-5-4 and the like; type it as 5/5/4</source>
        <translation>{text} es un día: una hoja de cálculo convierte así 5-5-4 y similares; escribirlo como 5/5/4</translation>
    </message>
    <message>
        <source>{text} is before {year}</source>
        <translation>{text} es anterior a {year}</translation>
    </message>
    <message>
        <source>{text} is no day of the calendar</source>
        <translation>{text} no es un día del calendario</translation>
    </message>
    <message>
        <source>{text} is not a number: allowed are digits (at most {most_digits}), a sign and one decimal point or comma, like 62.5</source>
        <translation>{text} no es un número: se admiten cifras (como mucho {most_digits}), un signo y un solo punto o coma decimal, como 62.5</translation>
    </message>
    <message>
        <source>{text} lies in the future</source>
        <translation>{text} está en el futuro</translation>
    </message>
    <message>
        <source>{text} lies in the future: dates up to {latest} are taken</source>
        <translation>{text} está en el futuro: se toman fechas hasta {latest}</translation>
    </message>
    <message>
        <source>{text} may be day or month first, and no date of the file tells; say which, or write dates as 2026-11-30</source>
        <translation>{text} puede llevar primero el día o el mes, y ninguna fecha del archivo lo aclara; decir cuál, o escribir las fechas como 2026-11-30</translation>
    </message>
    <message>
        <source>{text} may be day or month first: say which under Dates</source>
        <translation>{text} puede llevar primero el día o el mes: decir cuál en Fechas</translation>
    </message>
    <message>
        <source>{text} may be {value} or {text}: this file uses both decimal marks; write it without a mark or with other than three places</source>
        <translation>{text} puede ser {value} o {text}: este archivo usa ambos signos decimales; escribirlo sin signo o con un número de decimales distinto de tres</translation>
    </message>
    <message>
        <source>{text} may be {whole}{fraction} or {whole}.{fraction}: write {whole}{fraction} or {whole}.{fraction}</source>
        <translation>{text} puede ser {whole}{fraction} o {whole}.{fraction}: escribir {whole}{fraction} o {whole}.{fraction}</translation>
    </message>
    <message>
        <source>{text} sets, but {written} are written; {written} are read</source>
        <translation>{text} series, pero hay escritas {written}; se leen {written}</translation>
    </message>
    <message>
        <source>{text} sets: allowed are 1 to 20</source>
        <translation>{text} series: se admiten de 1 a 20</translation>
    </message>
    <message>
        <source>{text} was read as a spreadsheet&apos;s number of {day}</source>
        <translation>{text} se leyó como el número de {day} de una hoja de cálculo</translation>
    </message>
    <message>
        <source>{text}: in this file the day comes first in some dates and the month in others; write dates as 2026-11-30</source>
        <translation>{text}: en este archivo unas fechas llevan primero el día y otras el mes; escribir las fechas como 2026-11-30</translation>
    </message>
    <message>
        <source>{text}: kg or lb? Say which under Loads without a unit</source>
        <translation>{text}: ¿kg o lb? Decir cuál en Cargas sin unidad</translation>
    </message>
    <message>
        <source>{text}: read as a pair, each of that load</source>
        <translation>{text}: leído como un par, cada uno de esa carga</translation>
    </message>
    <message>
        <source>{text}: read as two sets; it may be left and right</source>
        <translation>{text}: leído como dos series; puede ser izquierda y derecha</translation>
    </message>
    <message>
        <source>{text}: the decimal mark here is {decimal_mark!r}</source>
        <translation>{text}: el signo decimal aquí es {decimal_mark!r}</translation>
    </message>
    <message>
        <source>{text}: the year must lie after 1900</source>
        <translation>{text}: el año debe ser posterior a 1900</translation>
    </message>
    <message>
        <source>{text}: write numbers without separators between thousands, with one decimal point or comma, like 1250.5</source>
        <translation>{text}: escribir los números sin separadores de miles, con un solo punto o coma decimal, como 1250.5</translation>
    </message>
    <message>
        <source>{text}: write the year with four digits</source>
        <translation>{text}: escribir el año con cuatro cifras</translation>
    </message>
    <message>
        <source>{value!r} is no unit: allowed are kg and lb</source>
        <translation>{value!r} no es una unidad: se admiten kg y lb</translation>
    </message>
    <message>
        <source>{value!r} is not a number: allowed is a decimal or whole number</source>
        <translation>{value!r} no es un número: se admite un número decimal o entero</translation>
    </message>
    <message>
        <source>{value:g} is not a whole number</source>
        <translation>{value:g} no es un número entero</translation>
    </message>
    <message>
        <source>{value} is not possible: allowed is {least:g} to {most:g}</source>
        <translation>{value} no es posible: se admite de {least:g} a {most:g}</translation>
    </message>
    <message>
        <source>{value} {value_2} is not a load: allowed is a number from -{most} to {most}</source>
        <translation>{value} {value_2} no es una carga: se admite un número de -{most} a {most}</translation>
    </message>
    <message>
        <source>{variable}: only the slowest variable may lack a ceiling</source>
        <translation>{variable}: solo la variable más lenta puede ir sin tope</translation>
    </message>
    <message>
        <source>{weekday}: {day}</source>
        <translation>{weekday}: {day}</translation>
    </message>
    <message>
        <source>{what}: at most {most_sets}, not {count}.</source>
        <translation>{what}: como mucho {most_sets}, no {count}.</translation>
    </message>
    <message>
        <source>{what}: {least} to {most}, not {value}.</source>
        <translation>{what}: {least} a {most}, no {value}.</translation>
    </message>
    <message>
        <source>{what}: {value} stands twice.</source>
        <translation>{what}: {value} está dos veces.</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>0 or more: help is typed for bodyweight only.</source>
        <translation>0 o más: la ayuda solo se escribe con peso corporal.</translation>
    </message>
    <message>
        <source>A rest day: nothing is planned.</source>
        <translation>Día de descanso: no hay nada planeado.</translation>
    </message>
    <message>
        <source>Add an activity</source>
        <translation>Añadir una actividad</translation>
    </message>
    <message>
        <source>Add an exercise</source>
        <translation>Añadir un ejercicio</translation>
    </message>
    <message>
        <source>Away on this day: nothing is asked.</source>
        <translation>Ausencia este día: no se pide nada.</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Masa corporal</translation>
    </message>
    <message>
        <source>Correct session of {name}, {day}</source>
        <translation>Corregir la sesión de {name}, {day}</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Esfuerzo</translation>
    </message>
    <message>
        <source>Effort of the other activity, 0 to 10</source>
        <translation>Esfuerzo de la otra actividad, 0 a 10</translation>
    </message>
    <message>
        <source>Effort of the session, 0 to 10</source>
        <translation>Esfuerzo de la sesión, 0 a 10</translation>
    </message>
    <message>
        <source>How hard, 0 to 10? Name, minutes, effort: all three.</source>
        <translation>¿Qué esfuerzo, 0 a 10? Nombre, minutos, esfuerzo: los tres.</translation>
    </message>
    <message>
        <source>How many minutes? Name, minutes, effort: all three.</source>
        <translation>¿Cuántos minutos? Nombre, minutos, esfuerzo: los tres.</translation>
    </message>
    <message>
        <source>How many? Type 0 if none was clean.</source>
        <translation>¿Cuántas? Escribir 0 si ninguna fue limpia.</translation>
    </message>
    <message>
        <source>Left and right, like 8/7.</source>
        <translation>Izquierda y derecha, como 8/7.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>Minutes of the other activity</source>
        <translation>Minutos de la otra actividad</translation>
    </message>
    <message>
        <source>Motivation</source>
        <translation>Motivación</translation>
    </message>
    <message>
        <source>Motivation, 1 bad to 5 good</source>
        <translation>Motivación, 1 malo a 5 bueno</translation>
    </message>
    <message>
        <source>No program is assigned to this trainee.</source>
        <translation>Este atleta no tiene ningún programa asignado.</translation>
    </message>
    <message>
        <source>No target changes: training went on as asked, and that still stands.</source>
        <translation>No cambia ningún objetivo: se entrenó como se pedía, y eso sigue en pie.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Note on the session</source>
        <translation>Nota de la sesión</translation>
    </message>
    <message>
        <source>Nothing is asked until a licensed professional&apos;s clearance is recorded with name and date.</source>
        <translation>No se pide nada hasta registrar la autorización de un profesional de la salud habilitado, con nombre y fecha.</translation>
    </message>
    <message>
        <source>One number: both sides work at once here.</source>
        <translation>Un solo número: aquí trabajan ambos lados a la vez.</translation>
    </message>
    <message>
        <source>Other activity</source>
        <translation>Otra actividad</translation>
    </message>
    <message>
        <source>Remove session of {name}, {day}</source>
        <translation>Quitar la sesión de {name}, {day}</translation>
    </message>
    <message>
        <source>Session of {name}, {day}</source>
        <translation>Sesión de {name}, {day}</translation>
    </message>
    <message>
        <source>Set {exercise} otherwise</source>
        <translation>Fijar {exercise} de otro modo</translation>
    </message>
    <message>
        <source>Sleep</source>
        <translation>Sueño</translation>
    </message>
    <message>
        <source>Sleep, 1 bad to 5 good</source>
        <translation>Sueño, 1 malo a 5 bueno</translation>
    </message>
    <message>
        <source>Soreness</source>
        <translation>Molestias</translation>
    </message>
    <message>
        <source>Soreness, 1 bad to 5 good</source>
        <translation>Molestias, 1 malo a 5 bueno</translation>
    </message>
    <message>
        <source>Stress</source>
        <translation>Estrés</translation>
    </message>
    <message>
        <source>Stress, 1 bad to 5 good</source>
        <translation>Estrés, 1 malo a 5 bueno</translation>
    </message>
    <message>
        <source>The program has ended: assign the next one.</source>
        <translation>El programa ha terminado: asignar el siguiente.</translation>
    </message>
    <message>
        <source>The program has not started yet.</source>
        <translation>El programa aún no ha empezado.</translation>
    </message>
    <message>
        <source>Which activity? Its minutes or effort are typed.</source>
        <translation>¿Qué actividad? Sus minutos o su esfuerzo están escritos.</translation>
    </message>
    <message>
        <source>Which load? None was asked.</source>
        <translation>¿Qué carga? No se pedía ninguna.</translation>
    </message>
    <message>
        <source>best {work}</source>
        <translation>mejor {work}</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>in reserve</source>
        <translation>en reserva</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>load in {unit}</source>
        <translation>carga en {unit}</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>sin valorar</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>sin planear</translation>
    </message>
    <message>
        <source>not planned yet</source>
        <translation>sin planear aún</translation>
    </message>
    <message>
        <source>nothing is asked</source>
        <translation>no se pide nada</translation>
    </message>
    <message>
        <source>on {day}</source>
        <translation>el {day}</translation>
    </message>
    <message>
        <source>pain 0-10</source>
        <translation>dolor 0-10</translation>
    </message>
    <message>
        <source>pain, 0 to 10</source>
        <translation>dolor, 0 a 10</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation>registrada</translation>
    </message>
    <message>
        <source>recorded, changed</source>
        <translation>registrada, cambiada</translation>
    </message>
    <message>
        <source>repetitions done</source>
        <translation>repeticiones hechas</translation>
    </message>
    <message>
        <source>repetitions in reserve</source>
        <translation>repeticiones en reserva</translation>
    </message>
    <message>
        <source>seconds held</source>
        <translation>segundos aguantados</translation>
    </message>
    <message>
        <source>with {count} in reserve</source>
        <translation>con {count} en reserva</translation>
    </message>
    <message>
        <source>{amount} less than asked</source>
        <translation>{amount} menos de lo pedido</translation>
    </message>
    <message>
        <source>{amount} more than asked</source>
        <translation>{amount} más de lo pedido</translation>
    </message>
    <message>
        <source>{day} {name} {minutes}, effort {effort}</source>
        <translation>{day} {name} {minutes}, esfuerzo {effort}</translation>
    </message>
    <message>
        <source>{exercise}, set {number}, {what}</source>
        <translation>{exercise}, serie {number}, {what}</translation>
    </message>
    <message>
        <source>{program}, week {week} of {weeks}</source>
        <translation>{program}, semana {week} de {weeks}</translation>
    </message>
    <message>
        <source>{text}, deload</source>
        <translation>{text}, descarga</translation>
    </message>
    <message>
        <source>{unit} are typed here: that is {value}.</source>
        <translation>Aquí se escriben {unit}: eso son {value}.</translation>
    </message>
    <message>
        <source>{unit} are typed here: that is {value}. Return again takes it.</source>
        <translation>Aquí se escriben {unit}: eso son {value}. Intro otra vez lo acepta.</translation>
    </message>
    <message>
        <source>{value} against {asked}: Return again if it is meant.</source>
        <translation>{value} frente a {asked}: Intro otra vez si es correcto.</translation>
    </message>
    <message>
        <source>{work} again</source>
        <translation>{work} otra vez</translation>
    </message>
</context>
<context>
    <name>SessionFoot</name>
    <message>
        <source>1 bad, 5 good</source>
        <translation>1 malo, 5 bueno</translation>
    </message>
    <message>
        <source>Add exercise</source>
        <translation>Añadir ejercicio</translation>
    </message>
    <message>
        <source>Body mass, sleep, soreness, stress, motivation, other activities, red flags</source>
        <translation>Masa corporal, sueño, molestias, estrés, motivación, otras actividades, señales de alarma</translation>
    </message>
    <message>
        <source>Exercise as asked</source>
        <translation>Ejercicio como se pide</translation>
    </message>
    <message>
        <source>Extra set</source>
        <translation>Serie extra</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Note on the session</source>
        <translation>Nota de la sesión</translation>
    </message>
    <message>
        <source>Red flag: chest pain, fainting, sudden severe pain or numbness</source>
        <translation>Señal de alarma: dolor de pecho, desmayo, dolor fuerte y repentino o entumecimiento</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Set as asked</source>
        <translation>Serie como se pide</translation>
    </message>
    <message>
        <source>Variation</source>
        <translation>Variación</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Calentamiento</translation>
    </message>
    <message>
        <source>cycling, a match</source>
        <translation>bicicleta, un partido</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>of 10</source>
        <translation>de 10</translation>
    </message>
    <message>
        <source>training load {load}</source>
        <translation>carga de entrenamiento {load}</translation>
    </message>
</context>
<context>
    <name>SessionForm</name>
    <message>
        <source>Nothing is typed yet.</source>
        <translation>Aún no hay nada escrito.</translation>
    </message>
    <message>
        <source>Removed. Undo brings it back.</source>
        <translation>Quitada. Deshacer la devuelve.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation>Guardar la corrección</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Guardado</translation>
    </message>
    <message>
        <source>This day has not come yet: today at the latest.</source>
        <translation>Este día aún no ha llegado: hoy como muy tarde.</translation>
    </message>
</context>
<context>
    <name>SessionHeading</name>
    <message>
        <source>All as asked</source>
        <translation>Todo como se pide</translation>
    </message>
    <message>
        <source>Day of the session</source>
        <translation>Día de la sesión</translation>
    </message>
    <message>
        <source>Next day</source>
        <translation>Día siguiente</translation>
    </message>
    <message>
        <source>Next day: Alt+Page Down. Training day: Ctrl+Page Down</source>
        <translation>Día siguiente: Alt+Av Pág. Día de entrenamiento: Ctrl+Av Pág</translation>
    </message>
    <message>
        <source>Previous day</source>
        <translation>Día anterior</translation>
    </message>
    <message>
        <source>Previous day: Alt+Page Up. Training day: Ctrl+Page Up</source>
        <translation>Día anterior: Alt+Re Pág. Día de entrenamiento: Ctrl+Re Pág</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Today: Alt+Home</source>
        <translation>Hoy: Alt+Inicio</translation>
    </message>
</context>
<context>
    <name>SessionKeys</name>
    <message>
        <source>Add an exercise</source>
        <translation>Añadir un ejercicio</translation>
    </message>
    <message>
        <source>All as asked</source>
        <translation>Todo como se pide</translation>
    </message>
    <message>
        <source>Body mass, wellness, other activity, red flag</source>
        <translation>Masa corporal, bienestar, otra actividad, señal de alarma</translation>
    </message>
    <message>
        <source>Clear a cell</source>
        <translation>Vaciar una celda</translation>
    </message>
    <message>
        <source>Done instead</source>
        <translation>Hecho en su lugar</translation>
    </message>
    <message>
        <source>Drop a set</source>
        <translation>Quitar una serie</translation>
    </message>
    <message>
        <source>Exercise as asked</source>
        <translation>Ejercicio como se pide</translation>
    </message>
    <message>
        <source>Extra set</source>
        <translation>Serie extra</translation>
    </message>
    <message>
        <source>Go to a date</source>
        <translation>Ir a una fecha</translation>
    </message>
    <message>
        <source>Load, where none is asked</source>
        <translation>Carga, donde no se pide</translation>
    </message>
    <message>
        <source>Next cell</source>
        <translation>Celda siguiente</translation>
    </message>
    <message>
        <source>Next day</source>
        <translation>Día siguiente</translation>
    </message>
    <message>
        <source>Next exercise</source>
        <translation>Ejercicio siguiente</translation>
    </message>
    <message>
        <source>Next row</source>
        <translation>Fila siguiente</translation>
    </message>
    <message>
        <source>Next session on record</source>
        <translation>Sesión registrada siguiente</translation>
    </message>
    <message>
        <source>Next training day</source>
        <translation>Próximo día de entrenamiento</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>One more session on this day</source>
        <translation>Una sesión más este día</translation>
    </message>
    <message>
        <source>Other variation</source>
        <translation>Otra variación</translation>
    </message>
    <message>
        <source>Save; then next trainee</source>
        <translation>Guardar; luego, atleta siguiente</translation>
    </message>
    <message>
        <source>Search the past</source>
        <translation>Buscar en el historial</translation>
    </message>
    <message>
        <source>Set as asked</source>
        <translation>Serie como se pide</translation>
    </message>
    <message>
        <source>Take typing back</source>
        <translation>Deshacer lo escrito</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Warm-up set</source>
        <translation>Serie de calentamiento</translation>
    </message>
</context>
<context>
    <name>SessionTyping</name>
    <message>
        <source>Instead: {exercise}</source>
        <translation>En su lugar: {exercise}</translation>
    </message>
    <message>
        <source>Nothing was asked of this set: type what was done.</source>
        <translation>A esta serie no se le pedía nada: escribir lo hecho.</translation>
    </message>
    <message>
        <source>This exercise has no variations.</source>
        <translation>Este ejercicio no tiene variaciones.</translation>
    </message>
</context>
<context>
    <name>SessionWay</name>
    <message>
        <source>No further session is on record.</source>
        <translation>No hay más sesiones registradas.</translation>
    </message>
    <message>
        <source>There is no further training day.</source>
        <translation>No hay más días de entrenamiento.</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source> on {day}</source>
        <translation> el {day}</translation>
    </message>
    <message>
        <source>, with collars</source>
        <translation>, con cierres</translation>
    </message>
    <message>
        <source>Best: {work}</source>
        <translation>Mejor: {work}</translation>
    </message>
    <message>
        <source>Clean: in the form agreed; only these count. Reserve: how many more would have been clean. Pain: 0 to 10; where it grows, stop that exercise and tell your coach. Effort of the whole session: 0 rest, 10 the hardest ever. 1-5: 1 bad, 5 good.</source>
        <translation>Limpia: en la forma acordada; solo estas cuentan. Reserva: cuántas limpias más habrían salido. Dolor: 0 a 10; si crece, parar ese ejercicio y avisar a quien te entrena. Esfuerzo de toda la sesión: 0 descanso, 10 lo más duro posible. 1-5: 1 malo, 5 bueno.</translation>
    </message>
    <message>
        <source>First set: as many clean reps as you can, stop at&#xa0;{stop}</source>
        <translation>Primera serie: todas las reps limpias que salgan, parar en&#xa0;{stop}</translation>
    </message>
    <message>
        <source>In between, if your coach agrees: {ways}</source>
        <translation>Entre medias, si quien te entrena está de acuerdo: {ways}</translation>
    </message>
    <message>
        <source>Last set: as many clean reps as you can, stop at&#xa0;{stop}</source>
        <translation>Última serie: todas las reps limpias que salgan, parar en&#xa0;{stop}</translation>
    </message>
    <message>
        <source>Last set: hold as long as it is clean, stop at&#xa0;{stop}</source>
        <translation>Última serie: aguantar mientras sea limpio, parar en&#xa0;{stop}</translation>
    </message>
    <message>
        <source>Last time, {day}: {work}</source>
        <translation>La última vez, {day}: {work}</translation>
    </message>
    <message>
        <source>No font is installed on this computer: a sheet needs one.</source>
        <translation>No hay ninguna fuente de letra en este ordenador: una hoja necesita una.</translation>
    </message>
    <message>
        <source>Nobody is asked anything on {day}.</source>
        <translation>No se pide nada a nadie el {day}.</translation>
    </message>
    <message>
        <source>Not asked: pain {pain} of 10{on_day}; ask your coach</source>
        <translation>No se pide: dolor {pain} de 10{on_day}; preguntar a quien te entrena</translation>
    </message>
    <message>
        <source>Not asked: {days} since the last time; ask your coach where to start</source>
        <translation>No se pide: {days} desde la última vez; preguntar a quien te entrena por dónde empezar</translation>
    </message>
    <message>
        <source>Not asked: {why}; ask your coach</source>
        <translation>No se pide: {why}; preguntar a quien te entrena</translation>
    </message>
    <message>
        <source>Not set yet: ask your coach where to start</source>
        <translation>Sin fijar aún: preguntar a quien te entrena por dónde empezar</translation>
    </message>
    <message>
        <source>Nothing is asked of {name} on {day}.</source>
        <translation>No se pide nada a {name} el {day}.</translation>
    </message>
    <message>
        <source>Nothing is asked of {name} until a licensed professional&apos;s clearance is recorded.</source>
        <translation>No se pide nada a {name} hasta registrar la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>The program of {name} has ended before {day}.</source>
        <translation>El programa de {name} ha terminado antes del {day}.</translation>
    </message>
    <message>
        <source>The program of {name} has not begun on {day}.</source>
        <translation>El programa de {name} no ha empezado el {day}.</translation>
    </message>
    <message>
        <source>The sheet cannot be written to {path}: {why}</source>
        <translation>La hoja no se puede escribir en {path}: {why}</translation>
    </message>
    <message>
        <source>Upper boxes: clean repetitions or seconds of each set, under what is asked. Lower boxes: the load where it was another, how many more would have been clean, pain 0 to 10; where pain grows, stop that exercise and tell your coach.</source>
        <translation>Casillas de arriba: repeticiones limpias o segundos de cada serie, bajo lo que se pide. Casillas de abajo: la carga si fue otra, cuántas limpias más habrían salido, dolor 0 a 10; si el dolor crece, parar ese ejercicio y avisar a quien te entrena.</translation>
    </message>
    <message>
        <source>Warm-up {ramp}</source>
        <translation>Calentamiento {ramp}</translation>
    </message>
    <message>
        <source>about {minutes}</source>
        <translation>unos {minutes}</translation>
    </message>
    <message>
        <source>band: {band}</source>
        <translation>banda: {band}</translation>
    </message>
    <message>
        <source>body mass {unit}</source>
        <translation>masa corporal {unit}</translation>
    </message>
    <message>
        <source>clean</source>
        <translation>en limpio</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>descarga</translation>
    </message>
    <message>
        <source>dumbbell handle alone</source>
        <translation>mancuerna vacía</translation>
    </message>
    <message>
        <source>dumbbell handle: {discs} at each end</source>
        <translation>mancuerna: {discs} en cada extremo</translation>
    </message>
    <message>
        <source>effort 0-10</source>
        <translation>esfuerzo 0-10</translation>
    </message>
    <message>
        <source>from {first}</source>
        <translation>desde {first}</translation>
    </message>
    <message>
        <source>help of {band}</source>
        <translation>ayuda de {band}</translation>
    </message>
    <message>
        <source>in turn with {others}</source>
        <translation>alternado con {others}</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izq.</translation>
    </message>
    <message>
        <source>left s</source>
        <translation>izq. s</translation>
    </message>
    <message>
        <source>load {unit}</source>
        <translation>carga {unit}</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>minutos</translation>
    </message>
    <message>
        <source>motivation 1-5</source>
        <translation>motivación 1-5</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>sin hacer</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>one more rep</source>
        <translation>una rep más</translation>
    </message>
    <message>
        <source>one more set</source>
        <translation>una serie más</translation>
    </message>
    <message>
        <source>page {number} of {count}</source>
        <translation>página {number} de {count}</translation>
    </message>
    <message>
        <source>pain</source>
        <translation>dolor</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>reps</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>reserva</translation>
    </message>
    <message>
        <source>rest {clock}</source>
        <translation>descanso {clock}</translation>
    </message>
    <message>
        <source>right</source>
        <translation>der.</translation>
    </message>
    <message>
        <source>right s</source>
        <translation>der. s</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>segundos</translation>
    </message>
    <message>
        <source>sleep 1-5</source>
        <translation>sueño 1-5</translation>
    </message>
    <message>
        <source>slower</source>
        <translation>más lento</translation>
    </message>
    <message>
        <source>smaller discs</source>
        <translation>discos más pequeños</translation>
    </message>
    <message>
        <source>soreness 1-5</source>
        <translation>molestias 1-5</translation>
    </message>
    <message>
        <source>stress 1-5</source>
        <translation>estrés 1-5</translation>
    </message>
    <message>
        <source>tempo {tempo}</source>
        <translation>tempo {tempo}</translation>
    </message>
    <message>
        <source>then {work}</source>
        <translation>luego {work}</translation>
    </message>
    <message>
        <source>to {last}</source>
        <translation>hasta {last}</translation>
    </message>
    <message>
        <source>week {week} of {weeks}</source>
        <translation>semana {week} de {weeks}</translation>
    </message>
    <message>
        <source>{amount} in {sets}</source>
        <translation>{amount} en {sets}</translation>
    </message>
    <message>
        <source>{bar} alone</source>
        <translation>{bar} sola</translation>
    </message>
    <message>
        <source>{bar}: {discs} a side</source>
        <translation>{bar}: {discs} por lado</translation>
    </message>
    <message>
        <source>{count} in reserve</source>
        <translation>{count} en reserva</translation>
    </message>
    <message>
        <source>{count} trainees</source>
        <translation>{count} atletas</translation>
    </message>
    <message>
        <source>{day} is a rest day of {name}: nothing is asked.</source>
        <translation>{day} es día de descanso de {name}: no se pide nada.</translation>
    </message>
    <message>
        <source>{kind} ({asked}, {share} harder)</source>
        <translation>{kind} ({asked}, {share} más exigente)</translation>
    </message>
    <message>
        <source>{load}, {loading}</source>
        <translation>{load}, {loading}</translation>
    </message>
    <message>
        <source>{name} has no program: assign one, and its days can be printed.</source>
        <translation>{name} no tiene programa: con uno asignado, sus días se pueden imprimir.</translation>
    </message>
    <message>
        <source>{name} is away on {day}: nothing is asked.</source>
        <translation>Ausencia de {name} el {day}: no se pide nada.</translation>
    </message>
    <message>
        <source>{ramp} each</source>
        <translation>{ramp} cada una</translation>
    </message>
    <message>
        <source>{reps} without load</source>
        <translation>{reps} sin carga</translation>
    </message>
    <message>
        <source>{seconds} a repetition</source>
        <translation>{seconds} por repetición</translation>
    </message>
    <message>
        <source>{sets}, each side,</source>
        <translation>{sets}, por lado,</translation>
    </message>
    <message>
        <source>{stack}: pin at {load}</source>
        <translation>{stack}: pasador en {load}</translation>
    </message>
    <message>
        <source>{stack}: pin at {load}, with the small plate</source>
        <translation>{stack}: pasador en {load}, con la placa pequeña</translation>
    </message>
    <message>
        <source>{work} each side</source>
        <translation>{work} por lado</translation>
    </message>
</context>
<context>
    <name>SheetArea</name>
    <message>
        <source>1 page. Boxes are left blank for the pencil.</source>
        <translation>1 página, con casillas en blanco.</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Day of the sheet</source>
        <translation>Día de la hoja</translation>
    </message>
    <message>
        <source>Go to a date</source>
        <translation>Ir a una fecha</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Grupo</translation>
    </message>
    <message>
        <source>Larger  +</source>
        <translation>Mayor  +</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Next day</source>
        <translation>Día siguiente</translation>
    </message>
    <message>
        <source>Next day of training</source>
        <translation>Próximo día de entrenamiento</translation>
    </message>
    <message>
        <source>Next day of training: Ctrl+Page Down</source>
        <translation>Próximo día de entrenamiento: Ctrl+Av Pág</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Previous day of training</source>
        <translation>Día de entrenamiento anterior</translation>
    </message>
    <message>
        <source>Previous day of training: Ctrl+Page Up</source>
        <translation>Día de entrenamiento anterior: Ctrl+Re Pág</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Imprimir…</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Guardar PDF…</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Guardar la hoja</translation>
    </message>
    <message>
        <source>Sheet saved to {path}</source>
        <translation>Hoja guardada en {path}</translation>
    </message>
    <message>
        <source>Sheet sent to {printer}</source>
        <translation>Hoja enviada a {printer}</translation>
    </message>
    <message>
        <source>Smaller  −</source>
        <translation>Menor  −</translation>
    </message>
    <message>
        <source>The group</source>
        <translation>El grupo</translation>
    </message>
    <message>
        <source>The group, or this trainee</source>
        <translation>El grupo, o este atleta</translation>
    </message>
    <message>
        <source>The printer did not take the sheet.</source>
        <translation>La impresora no aceptó la hoja.</translation>
    </message>
    <message>
        <source>This trainee</source>
        <translation>Este atleta</translation>
    </message>
    <message>
        <source>Whole page  0</source>
        <translation>Entera  0</translation>
    </message>
    <message>
        <source>Whose sheet</source>
        <translation>De quién es la hoja</translation>
    </message>
    <message>
        <source>{count} pages. Boxes are left blank for the pencil.</source>
        <translation>{count} páginas, con casillas en blanco.</translation>
    </message>
    <message>
        <source>{count} train on this day; save and next follows the sheet</source>
        <translation>{count} entrenan este día; «guardar y siguiente» sigue la hoja</translation>
    </message>
</context>
<context>
    <name>SheetPreview</name>
    <message>
        <source>Preview of the sheet</source>
        <translation>Vista previa de la hoja</translation>
    </message>
</context>
<context>
    <name>ShelfRow</name>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Supr</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>{action}: {name}</source>
        <translation>{action}: {name}</translation>
    </message>
</context>
<context>
    <name>SlotBlock</name>
    <message>
        <source>Not planned</source>
        <translation>Sin planear</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>{exercise}, note</source>
        <translation>{exercise}, nota</translation>
    </message>
</context>
<context>
    <name>SlotFields</name>
    <message>
        <source>A name tells two lines of one exercise apart, such as heavy and light</source>
        <translation>Un nombre distingue dos líneas de un mismo ejercicio, como pesada y ligera</translation>
    </message>
    <message>
        <source>In reserve</source>
        <translation>En reserva</translation>
    </message>
    <message>
        <source>In turn</source>
        <translation>Alternar</translation>
    </message>
    <message>
        <source>Letter of slots done in turn</source>
        <translation>Letra de los puestos que se alternan</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Load at the start</source>
        <translation>Carga al inicio</translation>
    </message>
    <message>
        <source>Load at the start as a percentage of the maximum</source>
        <translation>Carga al inicio como porcentaje del máximo</translation>
    </message>
    <message>
        <source>Name of the line</source>
        <translation>Nombre de la línea</translation>
    </message>
    <message>
        <source>Note for the sheet</source>
        <translation>Nota para la hoja</translation>
    </message>
    <message>
        <source>Reckoned once, from the trend on the day the program is given; without a trend the load beside it holds</source>
        <translation>Se calcula una vez, con la tendencia del día en que se asigna el programa; sin tendencia vale la carga de al lado</translation>
    </message>
    <message>
        <source>Repetitions at the start</source>
        <translation>Repeticiones al inicio</translation>
    </message>
    <message>
        <source>Repetitions in reserve</source>
        <translation>Repeticiones en reserva</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Descanso</translation>
    </message>
    <message>
        <source>Rest after a set</source>
        <translation>Descanso tras una serie</translation>
    </message>
    <message>
        <source>Seconds a repetition at the start</source>
        <translation>Segundos por repetición al inicio</translation>
    </message>
    <message>
        <source>Seconds each</source>
        <translation>Segundos c/u</translation>
    </message>
    <message>
        <source>Sets at the start</source>
        <translation>Series al inicio</translation>
    </message>
    <message>
        <source>Start: sets</source>
        <translation>Inicio: series</translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Tempo: seconds down, held, up</source>
        <translation>Tempo: segundos al bajar, parado, al subir</translation>
    </message>
    <message>
        <source>The start lies outside the rule&apos;s {floor} to {ceiling}.</source>
        <translation>El inicio queda fuera del rango de la regla, {floor} a {ceiling}.</translation>
    </message>
    <message>
        <source>Variation at the start</source>
        <translation>Variación al inicio</translation>
    </message>
    <message>
        <source>hold s</source>
        <translation>segundos</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>en total</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>name of the line</source>
        <translation>nombre de la línea</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>or % of max</source>
        <translation>o % del máx.</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>reps</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>reserva</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>descanso</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>series</translation>
    </message>
    <message>
        <source>slots in turn</source>
        <translation>puestos alternados</translation>
    </message>
    <message>
        <source>start</source>
        <translation>inicio</translation>
    </message>
    <message>
        <source>tempo</source>
        <translation>tempo</translation>
    </message>
    <message>
        <source>the only one</source>
        <translation>la única</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>variación</translation>
    </message>
</context>
<context>
    <name>SlotPanel</name>
    <message>
        <source>Another exercise here</source>
        <translation>Aquí otro ejercicio</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Bajar</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Exchange the exercise of this slot</source>
        <translation>Cambiar el ejercicio de este puesto</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Subir</translation>
    </message>
</context>
<context>
    <name>SlotRow</name>
    <message>
        <source>Return edits, Space marks, Alt with the arrows moves, Delete removes.</source>
        <translation>Intro edita, Espacio marca, Alt con las flechas mueve, Supr quita.</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>marcado</translation>
    </message>
</context>
<context>
    <name>SlotSheet</name>
    <message>
        <source>asked</source>
        <translation>pedido</translation>
    </message>
    <message>
        <source>last time</source>
        <translation>última vez</translation>
    </message>
    <message>
        <source>warm-up</source>
        <translation>calent.</translation>
    </message>
</context>
<context>
    <name>Slots</name>
    <message>
        <source>changed for {name}</source>
        <translation>cambiado para {name}</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>descarga</translation>
    </message>
    <message>
        <source>in turn {letter}</source>
        <translation>alternar {letter}</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>sin alcanzar</translation>
    </message>
    <message>
        <source>rest {time}</source>
        <translation>descanso {time}</translation>
    </message>
    <message>
        <source>rolls over</source>
        <translation>avanza la siguiente</translation>
    </message>
    <message>
        <source>tempo {tempo}</source>
        <translation>tempo {tempo}</translation>
    </message>
    <message>
        <source>the main line</source>
        <translation>la línea principal</translation>
    </message>
    <message>
        <source>{count} in all over {sets}</source>
        <translation>{count} en total en {sets}</translation>
    </message>
    <message>
        <source>{count} in reserve</source>
        <translation>{count} en reserva</translation>
    </message>
    <message>
        <source>{percent} % of {line}</source>
        <translation>{percent} % de {line}</translation>
    </message>
    <message>
        <source>{time} a repetition</source>
        <translation>{time} por repetición</translation>
    </message>
</context>
<context>
    <name>Sources</name>
    <message>
        <source>48 h between sessions for the same muscles, guideline quoted second-hand; sets to failure delay recovery by 24-48 h: Morán-Navarro 2017, Eur J Appl Physiol 117(12):2387-2399</source>
        <translation>48 h entre sesiones para los mismos músculos, guía citada de segunda mano; las series al fallo retrasan la recuperación 24-48 h: Morán-Navarro 2017, Eur J Appl Physiol 117(12):2387-2399</translation>
    </message>
    <message>
        <source>ACSM 2009, Med Sci Sports Exerc 41(3):687-708: raise the load by 2-10 %</source>
        <translation>ACSM 2009, Med Sci Sports Exerc 41(3):687-708: subir la carga un 2-10 %</translation>
    </message>
    <message>
        <source>Bell 2025, Strength Cond J (review): every 4-8 weeks; Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y (survey of competitive athletes): every 5.6 ± 2.3 weeks</source>
        <translation>Bell 2025, Strength Cond J (revisión): cada 4-8 semanas; Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y (encuesta a atletas de competición): cada 5,6 ± 2,3 semanas</translation>
    </message>
    <message>
        <source>Iversen 2021, Sports Med 51(10):2079-2095</source>
        <translation>Iversen 2021, Sports Med 51(10):2079-2095</translation>
    </message>
    <message>
        <source>Miller 2010, Pediatr Clin N Am 57(3):671-682; supervision and no maximum tests: common practice</source>
        <translation>Miller 2010, Pediatr Clin N Am 57(3):671-682; supervisión y ausencia de pruebas de máximo: práctica habitual</translation>
    </message>
    <message>
        <source>Schoenfeld 2017, J Sports Sci 35(11):1073-1082, DOI 10.1080/02640414.2016.1210197</source>
        <translation>Schoenfeld 2017, J Sports Sci 35(11):1073-1082, DOI 10.1080/02640414.2016.1210197</translation>
    </message>
    <message>
        <source>WHO 2020, Guidelines on physical activity and sedentary behaviour (quoted second-hand): all major muscle groups on 2 or more days a week</source>
        <translation>OMS 2020, Directrices sobre actividad física y hábitos sedentarios (citadas de segunda mano): todos los grandes grupos musculares 2 o más días por semana</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica habitual</translation>
    </message>
    <message>
        <source>common practice; no significant loss was seen after 3 weeks off: Ogasawara 2011</source>
        <translation>práctica habitual; no se vio pérdida significativa tras 3 semanas de pausa: Ogasawara 2011</translation>
    </message>
    <message>
        <source>monotony as in Foster 1998, Med Sci Sports Exerc 30(7):1164-1168; the limit of 2 is second-hand</source>
        <translation>monotonía como en Foster 1998, Med Sci Sports Exerc 30(7):1164-1168; el límite de 2 es de segunda mano</translation>
    </message>
    <message>
        <source>published guidance for older adults; WHO 2020, Guidelines on physical activity and sedentary behaviour (quoted second-hand)</source>
        <translation>guía publicada para personas mayores; OMS 2020, Directrices sobre actividad física y hábitos sedentarios (citadas de segunda mano)</translation>
    </message>
    <message>
        <source>triggers named in Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y (stall, soreness, aches); two at once: common practice</source>
        <translation>desencadenantes nombrados en Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y (estancamiento, molestias, dolencias); dos a la vez: práctica habitual</translation>
    </message>
</context>
<context>
    <name>Starters</name>
    <message>
        <source>A first year of holds: handstand against the wall, L-sit, hanging, each while fresh, then push-ups, rows and legs. It takes a wall, a box, a bar to hang from and a low one to row under; about 45 minutes. Repetitions or seconds grow first, then the variation gets harder. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Un primer año de isometrías: parada de manos contra la pared, L-sit y suspensión, cada una con el cuerpo fresco; luego flexiones, remos y piernas. Hacen falta una pared, un cajón, una barra de dominadas y una baja para remo; unos 45 minutos. Primero crecen las repeticiones o los segundos, luego la variación se hace más difícil. Cada sexta semana es de descarga. Los rangos son práctica habitual. Para personas sanas: una enfermedad, dolor, una lesión reciente o un cuestionario de salud dudoso necesitan antes la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Bodyweight alone, with one bar to hang from and one at hip height. Repetitions grow first, then the variation gets harder. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Solo peso corporal, con una barra de dominadas y otra a la altura de la cadera. Primero crecen las repeticiones, luego la variación se hace más difícil. Cada sexta semana es de descarga. Los rangos son práctica habitual. Para personas sanas: una enfermedad, dolor, una lesión reciente o un cuestionario de salud dudoso necesitan antes la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>Build</source>
        <translation>Desarrollo</translation>
    </message>
    <message>
        <source>Deadlift, front squat</source>
        <translation>Peso muerto, sentadilla frontal</translation>
    </message>
    <message>
        <source>Deload</source>
        <translation>Descarga</translation>
    </message>
    <message>
        <source>Five days, mixed equipment, for size</source>
        <translation>Cinco días, equipo variado, hipertrofia</translation>
    </message>
    <message>
        <source>Floor space and a wall, nothing else. Pulling needs something to pull on, so this has none: add a row or a pull-up as soon as there is a bar. Repetitions or seconds grow first, then the variation gets harder. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Espacio en el suelo y una pared, nada más. Para la tracción hace falta algo de donde tirar, así que aquí no hay: añadir un remo o una dominada en cuanto haya una barra. Primero crecen las repeticiones o los segundos, luego la variación se hace más difícil. Cada sexta semana es de descarga. Los rangos son práctica habitual. Para personas sanas: una enfermedad, dolor, una lesión reciente o un cuestionario de salud dudoso necesitan antes la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>For somebody new to it who owns a few pairs of dumbbells and a bench. Both days train the whole body; each takes about 45 minutes. Nothing here pulls from above: add a pull-up as soon as there is a bar. Repetitions grow before load. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Para quien empieza y tiene unos pares de mancuernas y un banco. Los dos días entrenan todo el cuerpo; cada uno dura unos 45 minutos. Aquí nada tira desde arriba: añadir una dominada en cuanto haya una barra. Las repeticiones crecen antes que la carga. Todas las cargas empiezan ligeras a propósito: fijar la de cada atleta, o hacer antes una evaluación. Cada sexta semana es de descarga. Los rangos son práctica habitual. Para personas sanas: una enfermedad, dolor, una lesión reciente o un cuestionario de salud dudoso necesitan antes la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>For somebody who has five clean pull-ups and dips: planche and front lever on turning days, each while fresh, then pulls, pushes and legs. It takes a bar, parallel bars, rings, a low bar and a box; about 45 minutes. Wrists and elbows need weeks, not days, to get used to straight-arm work: repeat a hold that aches. Repetitions or seconds grow first, then the variation gets harder. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Para quien hace cinco dominadas y fondos limpios: planche y front lever en días alternos, cada uno con el cuerpo fresco; luego tracciones, empujes y piernas. Hacen falta una barra, paralelas, anillas, una barra baja y un cajón; unos 45 minutos. Muñecas y codos necesitan semanas, no días, para acostumbrarse al trabajo de brazos rectos: repetir una isometría que molesta. Primero crecen las repeticiones o los segundos, luego la variación se hace más difícil. Cada sexta semana es de descarga. Los rangos son práctica habitual. Para personas sanas: una enfermedad, dolor, una lesión reciente o un cuestionario de salud dudoso necesitan antes la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>For somebody who owns a barbell, discs, a bench and a bar to hang from. Every load starts at the bare bar: set each trainee&apos;s own start first. Repetitions grow before load; bodyweight exercises move to a harder variation. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Para quien tiene barra, discos, banco y una barra de dominadas. Todas las cargas empiezan con la barra sola: fijar antes el inicio de cada atleta. Las repeticiones crecen antes que la carga; los ejercicios de peso corporal pasan a una variación más difícil. Cada sexta semana es de descarga. Los rangos son práctica habitual. Para personas sanas: una enfermedad, dolor, una lesión reciente o un cuestionario de salud dudoso necesitan antes la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>Four days, barbell and bar</source>
        <translation>Cuatro días, barra y dominadas</translation>
    </message>
    <message>
        <source>Four days, holds with bars and rings</source>
        <translation>Cuatro días, barras y anillas</translation>
    </message>
    <message>
        <source>Front lever, pull-up, hinge</source>
        <translation>Front lever, dominada, bisagra</translation>
    </message>
    <message>
        <source>Front lever, row, hinge</source>
        <translation>Front lever, remo, bisagra</translation>
    </message>
    <message>
        <source>Handstand, squat, push</source>
        <translation>Parada de manos, sentadilla, empuje</translation>
    </message>
    <message>
        <source>Handstand, squat, row</source>
        <translation>Parada de manos, sentadilla, remo</translation>
    </message>
    <message>
        <source>Hinge, dip, row</source>
        <translation>Bisagra, fondo, remo</translation>
    </message>
    <message>
        <source>Hinge, lunge, back</source>
        <translation>Bisagra, zancada, espalda</translation>
    </message>
    <message>
        <source>Hinge, press, pull-up</source>
        <translation>Bisagra, press, dominada</translation>
    </message>
    <message>
        <source>Hinge, press, row</source>
        <translation>Bisagra, press, remo</translation>
    </message>
    <message>
        <source>Hinge, push, press</source>
        <translation>Bisagra, empuje, press</translation>
    </message>
    <message>
        <source>Hinge, push, row</source>
        <translation>Bisagra, empuje, remo</translation>
    </message>
    <message>
        <source>L-sit, push, pull-up</source>
        <translation>L-sit, empuje, dominada</translation>
    </message>
    <message>
        <source>Lunge, hinge, press</source>
        <translation>Zancada, bisagra, press</translation>
    </message>
    <message>
        <source>Planche, dip, squat</source>
        <translation>Planche, fondo, sentadilla</translation>
    </message>
    <message>
        <source>Planche, push-up, squat</source>
        <translation>Planche, flexión, sentadilla</translation>
    </message>
    <message>
        <source>Press, close push, pull-up</source>
        <translation>Press, empuje cerrado, dominada</translation>
    </message>
    <message>
        <source>Pull-up, row, trunk</source>
        <translation>Dominada, remo, tronco</translation>
    </message>
    <message>
        <source>Push, press, row</source>
        <translation>Empuje, press, remo</translation>
    </message>
    <message>
        <source>Squat, hinge, lunge</source>
        <translation>Sentadilla, bisagra, zancada</translation>
    </message>
    <message>
        <source>Squat, push, arms</source>
        <translation>Sentadilla, empuje, brazos</translation>
    </message>
    <message>
        <source>Squat, push, pull</source>
        <translation>Sentadilla, empuje, tracción</translation>
    </message>
    <message>
        <source>Squat, push, pull-up</source>
        <translation>Sentadilla, empuje, dominada</translation>
    </message>
    <message>
        <source>Squat, push, row</source>
        <translation>Sentadilla, empuje, remo</translation>
    </message>
    <message>
        <source>Squat, push, trunk</source>
        <translation>Sentadilla, empuje, tronco</translation>
    </message>
    <message>
        <source>Squat, push-up, row</source>
        <translation>Sentadilla, flexión, remo</translation>
    </message>
    <message>
        <source>Squat, row, pull-up</source>
        <translation>Sentadilla, remo, dominada</translation>
    </message>
    <message>
        <source>Ten hard sets a week and more for the large muscles, in about an hour a day, with dumbbells and a bench. Arms are trained in turn, to save time. Nothing here pulls from above: add a pull-up as soon as there is a bar. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Diez series duras por semana o más para los músculos grandes, en cosa de una hora al día, con mancuernas y un banco. Los brazos se entrenan alternando, para ahorrar tiempo. Aquí nada tira desde arriba: añadir una dominada en cuanto haya una barra. Todas las cargas empiezan ligeras a propósito: fijar la de cada atleta, o hacer antes una evaluación. Cada sexta semana es de descarga. Los rangos son práctica habitual. Para personas sanas: una enfermedad, dolor, una lesión reciente o un cuestionario de salud dudoso necesitan antes la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>Ten hard sets a week and more for the large muscles, spread over five days of about 45 minutes, so that no pattern comes on two days running. It takes barbell, dumbbells, a bench, parallel bars and a bar to hang from, and somebody who recovers well. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Diez series duras por semana o más para los músculos grandes, repartidas en cinco días de unos 45 minutos, de modo que ningún patrón cae dos días seguidos. Hacen falta barra, mancuernas, un banco, paralelas, una barra de dominadas y alguien que se recupere bien. Todas las cargas empiezan ligeras a propósito: fijar la de cada atleta, o hacer antes una evaluación. Cada sexta semana es de descarga. Los rangos son práctica habitual. Para personas sanas: una enfermedad, dolor, una lesión reciente o un cuestionario de salud dudoso necesitan antes la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>The whole body on each of three days in 45 minutes, for somebody new to it who has a barbell, dumbbells, a bench and a bar to hang from. Repetitions grow before load. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Todo el cuerpo en cada uno de tres días, en 45 minutos, para quien empieza y tiene barra, mancuernas, banco y una barra de dominadas. Las repeticiones crecen antes que la carga. Todas las cargas empiezan ligeras a propósito: fijar la de cada atleta, o hacer antes una evaluación. Cada sexta semana es de descarga. Los rangos son práctica habitual. Para personas sanas: una enfermedad, dolor, una lesión reciente o un cuestionario de salud dudoso necesitan antes la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>Three days, barbell and bar</source>
        <translation>Tres días, barra y dominadas</translation>
    </message>
    <message>
        <source>Three days, dumbbells, for size</source>
        <translation>Tres días, mancuernas, hipertrofia</translation>
    </message>
    <message>
        <source>Three days, holds on floor and bar</source>
        <translation>Tres días, suelo y barra</translation>
    </message>
    <message>
        <source>Three short days, mixed equipment</source>
        <translation>Tres días cortos, equipo variado</translation>
    </message>
    <message>
        <source>Two days of squat and hinge, two of push and pull, none of them following one of its kind; about 50 minutes each, with barbell, discs, a bench and a bar to hang from. The second block asks fewer repetitions with more load. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Dos días de sentadilla y bisagra, dos de empuje y tracción, nunca seguidos los de un mismo tipo; unos 50 minutos cada uno, con barra, discos, banco y una barra de dominadas. El segundo bloque pide menos repeticiones con más carga. Todas las cargas empiezan ligeras a propósito: fijar la de cada atleta, o hacer antes una evaluación. Cada sexta semana es de descarga. Los rangos son práctica habitual. Para personas sanas: una enfermedad, dolor, una lesión reciente o un cuestionario de salud dudoso necesitan antes la autorización de un profesional de la salud habilitado.</translation>
    </message>
    <message>
        <source>Two days, bodyweight and a bar</source>
        <translation>Dos días, peso corporal y una barra</translation>
    </message>
    <message>
        <source>Two days, dumbbells and a bench</source>
        <translation>Dos días, mancuernas y banco</translation>
    </message>
    <message>
        <source>Two days, no equipment</source>
        <translation>Dos días, sin equipo</translation>
    </message>
</context>
<context>
    <name>StatusLine</name>
    <message>
        <source>Error: {text}</source>
        <translation>Error: {text}</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>StepStrip</name>
    <message>
        <source>Filled: where the trainee stands. Outlined: what comes next.</source>
        <translation>Lleno: donde está el atleta. Con contorno: lo que viene después.</translation>
    </message>
    <message>
        <source>Step strip, empty</source>
        <translation>Tira de pasos, vacía</translation>
    </message>
</context>
<context>
    <name>TakeOver</name>
    <message>
        <source>1 trainee has as many sessions there, up to the same day.</source>
        <translation>1 atleta tiene allí las mismas sesiones, hasta el mismo día.</translation>
    </message>
    <message>
        <source>There is no trainee in it.</source>
        <translation>No contiene ningún atleta.</translation>
    </message>
    <message>
        <source>no session</source>
        <translation>ninguna sesión</translation>
    </message>
    <message>
        <source>{count} trainees have as many sessions there, up to the same day.</source>
        <translation>{count} atletas tienen allí las mismas sesiones, hasta el mismo día.</translation>
    </message>
    <message>
        <source>{name} comes in: {then}</source>
        <translation>{name} llega: {then}</translation>
    </message>
    <message>
        <source>{name} goes: {now}</source>
        <translation>{name} desaparece: {now}</translation>
    </message>
    <message>
        <source>{name}: {then}, in place of {now}</source>
        <translation>{name}: {then}, en lugar de {now}</translation>
    </message>
    <message>
        <source>{sessions}, the last of {day}</source>
        <translation>{sessions}, la última del {day}</translation>
    </message>
</context>
<context>
    <name>TakeOverPanel</name>
    <message>
        <source>Everything in {name}</source>
        <translation>Todo lo de {name}</translation>
    </message>
    <message>
        <source>It takes the place of all that is in the data file now. What is there now is kept first, as a copy beside the data file that can be opened again.</source>
        <translation>Ocupa el lugar de todo lo que hay ahora en el archivo de datos. Lo que hay se guarda antes, como copia junto al archivo de datos, que se puede volver a abrir.</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Take it over</source>
        <translation>Traspasarlo</translation>
    </message>
    <message>
        <source>Take over everything</source>
        <translation>Traspasar todo</translation>
    </message>
</context>
<context>
    <name>Terms</name>
    <message>
        <source>Deload: a planned easier week with fewer sets and lighter loads; afterwards all goes on where it stood.</source>
        <translation>Descarga: una semana planeada más fácil, con menos series y cargas más ligeras; después todo sigue donde estaba.</translation>
    </message>
    <message>
        <source>Effective load: what the muscles really move; in bodyweight exercises a share of body mass, plus what is added, minus help.</source>
        <translation>Carga efectiva: lo que los músculos mueven de verdad; en ejercicios de peso corporal, una parte de la masa corporal, más el lastre, menos la ayuda.</translation>
    </message>
    <message>
        <source>Hard set: a working set, no warm-up; it counts 1 for a muscle trained directly and 0.5 for one that helps.</source>
        <translation>Serie dura: una serie de trabajo, no de calentamiento; cuenta 1 para un músculo entrenado directamente y 0,5 para uno que ayuda.</translation>
    </message>
    <message>
        <source>Monotony: how alike the days of a week are, as the mean of the seven daily loads over their standard deviation.</source>
        <translation>Monotonía: lo parecidos que son los días de una semana, como la media de las siete cargas diarias entre su desviación típica.</translation>
    </message>
    <message>
        <source>RIR, repetitions in reserve: how many more clean ones would have been possible at the end of the set; blank is unknown, not none.</source>
        <translation>RIR, repeticiones en reserva: cuántas limpias más habrían salido al final de la serie; en blanco es desconocido, no ninguna.</translation>
    </message>
    <message>
        <source>Strain: the week&apos;s training load times its monotony.</source>
        <translation>Tensión: la carga de entrenamiento de la semana por su monotonía.</translation>
    </message>
    <message>
        <source>Training load: how hard the session was (0 to 10) times its minutes; other activities count too.</source>
        <translation>Carga de entrenamiento: lo dura que fue la sesión (0 a 10) por sus minutos; las otras actividades también cuentan.</translation>
    </message>
    <message>
        <source>e1RM, the estimated one-repetition maximum: the load that would go once, reckoned from a set with more repetitions.</source>
        <translation>e1RM, el máximo estimado de una repetición: la carga que saldría una vez, calculada con una serie de más repeticiones.</translation>
    </message>
</context>
<context>
    <name>Tests</name>
    <message>
        <source>No maximum: clean reps until {reserve} are left</source>
        <translation>No es un máximo: reps limpias hasta que queden {reserve}</translation>
    </message>
    <message>
        <source>No maximum: end after the first set with {reserve} or fewer clean reps left</source>
        <translation>No es un máximo: terminar tras la primera serie con {reserve} o menos reps limpias de margen</translation>
    </message>
    <message>
        <source>No maximum: hold while it is clean</source>
        <translation>No es un máximo: aguantar mientras sea limpio</translation>
    </message>
    <message>
        <source>No start could be read: {why}</source>
        <translation>No se pudo leer un inicio: {why}</translation>
    </message>
    <message>
        <source>Read from this test, ± {percent}</source>
        <translation>Leído de esta prueba, ± {percent}</translation>
    </message>
    <message>
        <source>Read from this test; how far off is not known</source>
        <translation>Leído de esta prueba; no se sabe cuánto puede desviarse</translation>
    </message>
    <message>
        <source>Starts at {work}</source>
        <translation>Empieza con {work}</translation>
    </message>
    <message>
        <source>Test: sets of {amount}, from {first} up to {last}</source>
        <translation>Prueba: series de {amount}, desde {first} hasta {last}</translation>
    </message>
    <message>
        <source>Test: {amount}</source>
        <translation>Prueba: {amount}</translation>
    </message>
    <message>
        <source>Test: {amount} or more</source>
        <translation>Prueba: {amount} o más</translation>
    </message>
    <message>
        <source>no start yet</source>
        <translation>sin inicio aún</translation>
    </message>
    <message>
        <source>rest {time}</source>
        <translation>descanso {time}</translation>
    </message>
    <message>
        <source>stop at&#xa0;{stop}</source>
        <translation>parar en&#xa0;{stop}</translation>
    </message>
    <message>
        <source>test with reps in reserve</source>
        <translation>prueba con reps en reserva</translation>
    </message>
    <message>
        <source>test: held while it is clean</source>
        <translation>prueba: aguantar mientras sea limpio</translation>
    </message>
    <message>
        <source>{test} at {load}</source>
        <translation>{test} con {load}</translation>
    </message>
    <message>
        <source>{test} each side</source>
        <translation>{test} por lado</translation>
    </message>
    <message>
        <source>{work}, as before</source>
        <translation>{work}, como antes</translation>
    </message>
</context>
<context>
    <name>TitleField</name>
    <message>
        <source>Type to rename</source>
        <translation>Escribir para cambiar el nombre</translation>
    </message>
</context>
<context>
    <name>TraineeForm</name>
    <message>
        <source>A change counts from today on; earlier sessions keep what was there then.</source>
        <translation>Un cambio vale desde hoy; las sesiones anteriores conservan lo que había entonces.</translation>
    </message>
    <message>
        <source>A trainee needs a name.</source>
        <translation>Un atleta necesita un nombre.</translation>
    </message>
    <message>
        <source>Add {name}</source>
        <translation>Añadir a {name}</translation>
    </message>
    <message>
        <source>Archive</source>
        <translation>Archivar</translation>
    </message>
    <message>
        <source>Archive {name}</source>
        <translation>Archivar a {name}</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Masa corporal</translation>
    </message>
    <message>
        <source>Body mass on {day}</source>
        <translation>Masa corporal el {day}</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Recuperar</translation>
    </message>
    <message>
        <source>Bring {name} back</source>
        <translation>Recuperar a {name}</translation>
    </message>
    <message>
        <source>Change the equipment</source>
        <translation>Cambiar el equipo</translation>
    </message>
    <message>
        <source>Change {name}</source>
        <translation>Cambiar a {name}</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Health and consent</source>
        <translation>Salud y consentimiento</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove {name} and all sessions</source>
        <translation>Quitar a {name} y todas sus sesiones</translation>
    </message>
    <message>
        <source>Somebody has this name already.</source>
        <translation>Alguien tiene ya este nombre.</translation>
    </message>
    <message>
        <source>Somebody new</source>
        <translation>Alguien nuevo</translation>
    </message>
    <message>
        <source>every change is kept, and can be undone</source>
        <translation>cada cambio se guarda y se puede deshacer</translation>
    </message>
    <message>
        <source>kept as soon as a name stands</source>
        <translation>se guarda en cuanto hay un nombre</translation>
    </message>
</context>
<context>
    <name>TraineeProgram</name>
    <message>
        <source>End {program} for {name}</source>
        <translation>Terminar {program} para {name}</translation>
    </message>
    <message>
        <source>Give {program} to {name}</source>
        <translation>Asignar {program} a {name}</translation>
    </message>
    <message>
        <source>Take back a change for {name}</source>
        <translation>Retirar un cambio para {name}</translation>
    </message>
    <message>
        <source>{exercise}: one more day a week</source>
        <translation>{exercise}: un día más por semana</translation>
    </message>
    <message>
        <source>{what}, for {name}</source>
        <translation>{what}, para {name}</translation>
    </message>
</context>
<context>
    <name>VariationKeys</name>
    <message>
        <source>active</source>
        <translation>activo</translation>
    </message>
    <message>
        <source>archer</source>
        <translation>arquero</translation>
    </message>
    <message>
        <source>arms back</source>
        <translation>brazos atrás</translation>
    </message>
    <message>
        <source>arms crossed</source>
        <translation>brazos cruzados</translation>
    </message>
    <message>
        <source>arms forward</source>
        <translation>brazos al frente</translation>
    </message>
    <message>
        <source>arms long</source>
        <translation>brazos largos</translation>
    </message>
    <message>
        <source>arms side</source>
        <translation>brazos altos</translation>
    </message>
    <message>
        <source>assisted single</source>
        <translation>1, con apoyo</translation>
    </message>
    <message>
        <source>assisted up</source>
        <translation>subida asistida</translation>
    </message>
    <message>
        <source>back</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>backward</source>
        <translation>hacia atrás</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barra</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>banco</translation>
    </message>
    <message>
        <source>bench bent</source>
        <translation>banco, doblado</translation>
    </message>
    <message>
        <source>both</source>
        <translation>ambas</translation>
    </message>
    <message>
        <source>both step</source>
        <translation>ambas, escalón</translation>
    </message>
    <message>
        <source>box</source>
        <translation>cajón</translation>
    </message>
    <message>
        <source>box single</source>
        <translation>1, al cajón</translation>
    </message>
    <message>
        <source>chest</source>
        <translation>pecho</translation>
    </message>
    <message>
        <source>chest wall</source>
        <translation>pecho a pared</translation>
    </message>
    <message>
        <source>elbows</source>
        <translation>codos</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>feet down</source>
        <translation>pies abajo</translation>
    </message>
    <message>
        <source>feet high</source>
        <translation>pies altos</translation>
    </message>
    <message>
        <source>feet raised</source>
        <translation>pies en alto</translation>
    </message>
    <message>
        <source>feet wall</source>
        <translation>pies, pared</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>suelo</translation>
    </message>
    <message>
        <source>fly</source>
        <translation>apertura</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>adelante</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>full</source>
        <translation>total</translation>
    </message>
    <message>
        <source>half lay</source>
        <translation>medio recta</translation>
    </message>
    <message>
        <source>half way</source>
        <translation>a medias</translation>
    </message>
    <message>
        <source>hands thighs</source>
        <translation>manos, muslos</translation>
    </message>
    <message>
        <source>heel taps</source>
        <translation>toques talón</translation>
    </message>
    <message>
        <source>heels up</source>
        <translation>de puntillas</translation>
    </message>
    <message>
        <source>high</source>
        <translation>alta</translation>
    </message>
    <message>
        <source>hips bent</source>
        <translation>cadera doblada</translation>
    </message>
    <message>
        <source>hold top</source>
        <translation>pausa arriba</translation>
    </message>
    <message>
        <source>hover</source>
        <translation>en el aire</translation>
    </message>
    <message>
        <source>jump</source>
        <translation>con salto</translation>
    </message>
    <message>
        <source>kick wall</source>
        <translation>talones, pared</translation>
    </message>
    <message>
        <source>knees</source>
        <translation>rodillas</translation>
    </message>
    <message>
        <source>knees bent</source>
        <translation>rod. dobladas</translation>
    </message>
    <message>
        <source>knees high</source>
        <translation>rodillas altas</translation>
    </message>
    <message>
        <source>knees raised</source>
        <translation>rodillas, cajón</translation>
    </message>
    <message>
        <source>knees wall</source>
        <translation>rodillas, pared</translation>
    </message>
    <message>
        <source>lean</source>
        <translation>inclinada</translation>
    </message>
    <message>
        <source>lean 15</source>
        <translation>a 15°</translation>
    </message>
    <message>
        <source>lean 30</source>
        <translation>a 30°</translation>
    </message>
    <message>
        <source>lean 45</source>
        <translation>a 45°</translation>
    </message>
    <message>
        <source>lean 60</source>
        <translation>a 60°</translation>
    </message>
    <message>
        <source>lean 75</source>
        <translation>a 75°</translation>
    </message>
    <message>
        <source>leaning</source>
        <translation>inclinado</translation>
    </message>
    <message>
        <source>leg</source>
        <translation>pierna</translation>
    </message>
    <message>
        <source>leg up</source>
        <translation>pierna arriba</translation>
    </message>
    <message>
        <source>legs</source>
        <translation>piernas</translation>
    </message>
    <message>
        <source>legs bar</source>
        <translation>a la barra</translation>
    </message>
    <message>
        <source>legs level</source>
        <translation>a horizontal</translation>
    </message>
    <message>
        <source>legs long</source>
        <translation>piernas largas</translation>
    </message>
    <message>
        <source>level</source>
        <translation>horizontal</translation>
    </message>
    <message>
        <source>long</source>
        <translation>larga</translation>
    </message>
    <message>
        <source>low</source>
        <translation>bajo</translation>
    </message>
    <message>
        <source>lowering</source>
        <translation>bajada</translation>
    </message>
    <message>
        <source>one arm</source>
        <translation>1 brazo</translation>
    </message>
    <message>
        <source>one arm assisted</source>
        <translation>un brazo, ayuda</translation>
    </message>
    <message>
        <source>one hand</source>
        <translation>1 mano</translation>
    </message>
    <message>
        <source>one knee</source>
        <translation>una rodilla</translation>
    </message>
    <message>
        <source>one leg</source>
        <translation>1 pierna</translation>
    </message>
    <message>
        <source>one out</source>
        <translation>ida con una</translation>
    </message>
    <message>
        <source>open tuck</source>
        <translation>tuck abierto</translation>
    </message>
    <message>
        <source>opposite</source>
        <translation>contrarios</translation>
    </message>
    <message>
        <source>pike</source>
        <translation>pica</translation>
    </message>
    <message>
        <source>pike box</source>
        <translation>pica, cajón</translation>
    </message>
    <message>
        <source>pike raised</source>
        <translation>pica en alto</translation>
    </message>
    <message>
        <source>plank</source>
        <translation>plancha</translation>
    </message>
    <message>
        <source>push off</source>
        <translation>con empuje</translation>
    </message>
    <message>
        <source>raised</source>
        <translation>elevada</translation>
    </message>
    <message>
        <source>rear raised</source>
        <translation>atrás en alto</translation>
    </message>
    <message>
        <source>rings</source>
        <translation>anillas</translation>
    </message>
    <message>
        <source>shoulders raised</source>
        <translation>hombros en alto</translation>
    </message>
    <message>
        <source>sideways</source>
        <translation>de lado</translation>
    </message>
    <message>
        <source>single</source>
        <translation>1 pierna</translation>
    </message>
    <message>
        <source>single raised</source>
        <translation>1, en alto</translation>
    </message>
    <message>
        <source>single step</source>
        <translation>1, escalón</translation>
    </message>
    <message>
        <source>slow</source>
        <translation>lenta</translation>
    </message>
    <message>
        <source>split</source>
        <translation>pies separados</translation>
    </message>
    <message>
        <source>staggered</source>
        <translation>escalonada</translation>
    </message>
    <message>
        <source>straddle</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>supported</source>
        <translation>con apoyo</translation>
    </message>
    <message>
        <source>table</source>
        <translation>mesa</translation>
    </message>
    <message>
        <source>toe</source>
        <translation>punta</translation>
    </message>
    <message>
        <source>toe pulls</source>
        <translation>puntas, pared</translation>
    </message>
    <message>
        <source>towel</source>
        <translation>toalla</translation>
    </message>
    <message>
        <source>towels</source>
        <translation>toallas</translation>
    </message>
    <message>
        <source>tuck</source>
        <translation>tuck</translation>
    </message>
    <message>
        <source>two up one down</source>
        <translation>sube 2, baja 1</translation>
    </message>
    <message>
        <source>upright</source>
        <translation>vertical</translation>
    </message>
    <message>
        <source>walking</source>
        <translation>caminando</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>pared</translation>
    </message>
    <message>
        <source>wall deep</source>
        <translation>pared, hondo</translation>
    </message>
    <message>
        <source>wall lowering</source>
        <translation>pared, bajada</translation>
    </message>
</context>
<context>
    <name>Ways</name>
    <message>
        <source>Add a day off: from {day} train on {weekday}</source>
        <translation>Añadir un día libre: desde el {day} entrenar el {weekday}</translation>
    </message>
    <message>
        <source>Back off to {work}</source>
        <translation>Retroceder a {work}</translation>
    </message>
    <message>
        <source>Deload from {day}</source>
        <translation>Descarga desde el {day}</translation>
    </message>
    <message>
        <source>Let another variable grow</source>
        <translation>Dejar crecer otra variable</translation>
    </message>
    <message>
        <source>Let repetitions grow first, from {floor} to {ceiling}</source>
        <translation>Dejar crecer primero las repeticiones, de {floor} a {ceiling}</translation>
    </message>
    <message>
        <source>Let sets grow too, from {floor} to {ceiling}</source>
        <translation>Dejar crecer también las series, de {floor} a {ceiling}</translation>
    </message>
    <message>
        <source>Look at the deload</source>
        <translation>Ver la descarga</translation>
    </message>
    <message>
        <source>Look at the program</source>
        <translation>Ver el programa</translation>
    </message>
    <message>
        <source>Look at the progress</source>
        <translation>Ver el progreso</translation>
    </message>
    <message>
        <source>Look at the rule</source>
        <translation>Ver la regla</translation>
    </message>
    <message>
        <source>Look at the targets</source>
        <translation>Ver los objetivos</translation>
    </message>
    <message>
        <source>Look at the trainee</source>
        <translation>Ver al atleta</translation>
    </message>
    <message>
        <source>Look at the week</source>
        <translation>Ver la semana</translation>
    </message>
    <message>
        <source>Record a clearance</source>
        <translation>Registrar una autorización</translation>
    </message>
    <message>
        <source>Say what is recorded</source>
        <translation>Decir qué se registra</translation>
    </message>
    <message>
        <source>Stay at {work}</source>
        <translation>Quedarse en {work}</translation>
    </message>
    <message>
        <source>Take another exercise</source>
        <translation>Tomar otro ejercicio</translation>
    </message>
</context>
<context>
    <name>Weeks</name>
    <message>
        <source>About {time}.</source>
        <translation>Unos {time}.</translation>
    </message>
    <message>
        <source>At or above {count} ({of}; {source}).</source>
        <translation>En {count} o más ({of}; {source}).</translation>
    </message>
    <message>
        <source>Hard sets a week</source>
        <translation>Series duras por semana</translation>
    </message>
    <message>
        <source>No trend yet says how likely it is.</source>
        <translation>Aún no hay tendencia que diga lo probable que es.</translation>
    </message>
    <message>
        <source>Not trained.</source>
        <translation>Sin entrenar.</translation>
    </message>
    <message>
        <source>Nothing is planned yet: Return leads to the day.</source>
        <translation>Aún no hay nada planeado: Intro lleva al día.</translation>
    </message>
    <message>
        <source>Nothing is planned.</source>
        <translation>No hay nada planeado.</translation>
    </message>
    <message>
        <source>Sets a week</source>
        <translation>Series por semana</translation>
    </message>
    <message>
        <source>The trainee has {time}.</source>
        <translation>El atleta tiene {time}.</translation>
    </message>
    <message>
        <source>The trend expects a maximum of {low} to {high} then (80 % band)</source>
        <translation>La tendencia espera entonces un máximo de {low} a {high} (franja del 80 %)</translation>
    </message>
    <message>
        <source>Under the first published mark of {count}.</source>
        <translation>Por debajo de la primera referencia publicada, {count}.</translation>
    </message>
    <message>
        <source>Week {number}</source>
        <translation>Semana {number}</translation>
    </message>
    <message>
        <source>a deload is proposed</source>
        <translation>se propone una descarga</translation>
    </message>
    <message>
        <source>by muscle; dotted: published marks at {marks}; hollow: under {least}</source>
        <translation>por músculo; punteado: referencias publicadas en {marks}; hueco: menos de {least}</translation>
    </message>
    <message>
        <source>by pattern; no published range exists: what counts is the balance</source>
        <translation>por patrón; no hay rango publicado: lo que cuenta es el equilibrio</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>desc.</translation>
    </message>
    <message>
        <source>deload?</source>
        <translation>¿desc.?</translation>
    </message>
    <message>
        <source>done: {sets}</source>
        <translation>hecho: {sets}</translation>
    </message>
    <message>
        <source>from {day}</source>
        <translation>desde el {day}</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>nothing was done</source>
        <translation>no se hizo nada</translation>
    </message>
    <message>
        <source>over {share}</source>
        <translation>más de {share}</translation>
    </message>
    <message>
        <source>push for each pull</source>
        <translation>empuje por cada tracción</translation>
    </message>
    <message>
        <source>under {share}</source>
        <translation>menos de {share}</translation>
    </message>
    <message>
        <source>upper for each lower</source>
        <translation>superior por cada inferior</translation>
    </message>
    <message>
        <source>{day}: {work} was asked; {done}.</source>
        <translation>{day}: se pedía {work}; {done}.</translation>
    </message>
    <message>
        <source>{name}, {count} hard sets.</source>
        <translation>{name}, {count} series duras.</translation>
    </message>
    <message>
        <source>{name}, {count} sets.</source>
        <translation>{name}, {count} series.</translation>
    </message>
    <message>
        <source>{said}; chance to do this: {chance}.</source>
        <translation>{said}; probabilidad de hacerlo: {chance}.</translation>
    </message>
</context>
<context>
    <name>WeeksPage</name>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Program</source>
        <translation>Programa</translation>
    </message>
    <message>
        <source>being worked out …</source>
        <translation>calculando …</translation>
    </message>
    <message>
        <source>from the starts of its slots, for nobody yet</source>
        <translation>desde los inicios de sus puestos, para nadie aún</translation>
    </message>
    <message>
        <source>from the starts of its slots, with what {name} has</source>
        <translation>desde los inicios de sus puestos, con lo que tiene {name}</translation>
    </message>
    <message>
        <source>from where {name} stands</source>
        <translation>desde donde está {name}</translation>
    </message>
    <message>
        <source>weeks ahead</source>
        <translation>próximas semanas</translation>
    </message>
</context>
<context>
    <name>WeeksTable</name>
    <message>
        <source>Arrows choose a cell, Return leads to its rule.</source>
        <translation>Las flechas eligen una celda, Intro lleva a su regla.</translation>
    </message>
    <message>
        <source>Weeks ahead</source>
        <translation>Próximas semanas</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>1 rep</source>
        <translation>1 rep</translation>
    </message>
    <message>
        <source>1 set</source>
        <translation>1 serie</translation>
    </message>
    <message>
        <source>1 week</source>
        <translation>1 semana</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>isometría</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>next {value}</source>
        <translation>siguiente {value}</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>sin fijar</translation>
    </message>
    <message>
        <source>of {first} to {last}</source>
        <translation>de {first} a {last}</translation>
    </message>
    <message>
        <source>once</source>
        <translation>una vez</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>reps</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>series</translation>
    </message>
    <message>
        <source>tempo</source>
        <translation>tempo</translation>
    </message>
    <message>
        <source>then {variable} moves</source>
        <translation>luego avanza {variable}</translation>
    </message>
    <message>
        <source>twice</source>
        <translation>dos veces</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>variación</translation>
    </message>
    <message>
        <source>with {load}</source>
        <translation>con {load} de lastre</translation>
    </message>
    <message>
        <source>with {load} of help</source>
        <translation>con {load} de ayuda</translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation>{count} días</translation>
    </message>
    <message>
        <source>{count} min</source>
        <translation>{count} min</translation>
    </message>
    <message>
        <source>{count} reps</source>
        <translation>{count} reps</translation>
    </message>
    <message>
        <source>{count} sets</source>
        <translation>{count} series</translation>
    </message>
    <message>
        <source>{count} times</source>
        <translation>{count} veces</translation>
    </message>
    <message>
        <source>{count} weeks</source>
        <translation>{count} semanas</translation>
    </message>
    <message>
        <source>{first} and {last}</source>
        <translation>{first} y {last}</translation>
    </message>
    <message>
        <source>{work} at {load}</source>
        <translation>{work} con {load}</translation>
    </message>
</context>
<context>
    <name>WorkAreas</name>
    <message>
        <source>&amp;Desk</source>
        <translation>&amp;Escritorio</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>I&amp;mportar</translation>
    </message>
    <message>
        <source>&amp;Notes</source>
        <translation>&amp;Notas</translation>
    </message>
    <message>
        <source>&amp;Program</source>
        <translation>&amp;Programa</translation>
    </message>
    <message>
        <source>&amp;Session</source>
        <translation>&amp;Sesión</translation>
    </message>
    <message>
        <source>&amp;Trainee</source>
        <translation>&amp;Atleta</translation>
    </message>
    <message>
        <source>&amp;Week and load</source>
        <translation>Semana y &amp;carga</translation>
    </message>
    <message>
        <source>P&amp;ast</source>
        <translation>H&amp;istorial</translation>
    </message>
    <message>
        <source>P&amp;rogress</source>
        <translation>P&amp;rogreso</translation>
    </message>
    <message>
        <source>Rep&amp;orts</source>
        <translation>In&amp;formes</translation>
    </message>
    <message>
        <source>S&amp;heet</source>
        <translation>&amp;Hoja</translation>
    </message>
</context>
<context>
    <name>WorkPanel</name>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Cancelled, nothing is changed.</source>
        <translation>Cancelado, no ha cambiado nada.</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Por dónde va</translation>
    </message>
    <message>
        <source>Rungwise</source>
        <translation>Rungwise</translation>
    </message>
</context>
<context>
    <name>_CandidateList</name>
    <message>
        <source>Exercises found</source>
        <translation>Ejercicios encontrados</translation>
    </message>
</context>
<context>
    <name>_FirstSteps</name>
    <message>
        <source>Add a trainee</source>
        <translation>Añadir un atleta</translation>
    </message>
    <message>
        <source>Loads in</source>
        <translation>Cargas en</translation>
    </message>
    <message>
        <source>Open the demo scenario</source>
        <translation>Abrir el caso de demostración</translation>
    </message>
    <message>
        <source>Start with one person: their name, what they can train with, and when. Then give them a program, print the first sheet, and type what was done.</source>
        <translation>Empezar por una persona: su nombre, con qué puede entrenar y cuándo. Después asignarle un programa, imprimir la primera hoja y escribir lo hecho.</translation>
    </message>
    <message>
        <source>The demo is an invented rowing club in a data file of its own.</source>
        <translation>La demostración es un club de remo inventado, en un archivo de datos propio.</translation>
    </message>
    <message>
        <source>Unit of loads</source>
        <translation>Unidad de las cargas</translation>
    </message>
    <message>
        <source>each trainee can have their own</source>
        <translation>cada atleta puede tener la suya</translation>
    </message>
</context>
<context>
    <name>_Headings</name>
    <message>
        <source>Fastest first</source>
        <translation>Por rapidez</translation>
    </message>
    <message>
        <source>by</source>
        <translation>cada</translation>
    </message>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>when a slower one moves</source>
        <translation>si avanza una más lenta</translation>
    </message>
</context>
<context>
    <name>_NameRow</name>
    <message>
        <source>1 line</source>
        <translation>1 fila</translation>
    </message>
    <message>
        <source>What is {name}?</source>
        <translation>¿Qué es {name}?</translation>
    </message>
    <message>
        <source>Which trainee is {name}?</source>
        <translation>¿Qué atleta es {name}?</translation>
    </message>
    <message>
        <source>a new exercise, like…</source>
        <translation>un ejercicio nuevo, como…</translation>
    </message>
    <message>
        <source>another exercise…</source>
        <translation>otro ejercicio…</translation>
    </message>
    <message>
        <source>another trainee…</source>
        <translation>otro atleta…</translation>
    </message>
    <message>
        <source>leave its lines out</source>
        <translation>omitir sus filas</translation>
    </message>
    <message>
        <source>new on the roster</source>
        <translation>alguien nuevo en la lista</translation>
    </message>
    <message>
        <source>which exercise?</source>
        <translation>¿qué ejercicio?</translation>
    </message>
    <message>
        <source>which trainee?</source>
        <translation>¿qué atleta?</translation>
    </message>
    <message>
        <source>{count} lines</source>
        <translation>{count} filas</translation>
    </message>
</context>
<context>
    <name>_Nobody</name>
    <message>
        <source>Choose a trainee</source>
        <translation>Elegir un atleta</translation>
    </message>
    <message>
        <source>Pick one in the roster at the left, or type a name after Ctrl+L.</source>
        <translation>Elegir uno en la lista de la izquierda, o escribir un nombre tras Ctrl+L.</translation>
    </message>
</context>
<context>
    <name>_NoteField</name>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
</context>
<context>
    <name>dialog</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
</TS>
