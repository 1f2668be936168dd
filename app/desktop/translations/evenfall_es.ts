<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>AuditView</name>
    <message>
        <source>▼ drier</source>
        <translation>▼ más seco</translation>
    </message>
    <message>
        <source>▲ wetter</source>
        <translation>▲ más mojado</translation>
    </message>
    <message>
        <source>= as designed</source>
        <translation>= según el diseño</translation>
    </message>
    <message>
        <source>%1 cans that count, from the catch test</source>
        <translation>%1 recipientes que cuentan, de la prueba de captación</translation>
    </message>
    <message>
        <source>▼ less than most</source>
        <translation>▼ menos que la mayoría</translation>
    </message>
    <message>
        <source>▲ more than most</source>
        <translation>▲ más que la mayoría</translation>
    </message>
    <message>
        <source>? cannot tell</source>
        <translation>? no se puede decir</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Aspersor</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Output</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Cans</source>
        <translation>Recipientes</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>Output of head %1</source>
        <translation>Entrega del aspersor %1</translation>
    </message>
    <message>
        <source>share of its designed flow that explains the catches best, ± one standard error</source>
        <translation>parte de su caudal de diseño que mejor explica lo captado, ± un error estándar</translation>
    </message>
    <message>
        <source>Can</source>
        <translation>Recipiente</translation>
    </message>
    <message>
        <source>Caught</source>
        <translation>Captado</translation>
    </message>
    <message>
        <source>Predicted</source>
        <translation>Previsto</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Diferencia</translation>
    </message>
    <message>
        <source>Difference at can %1</source>
        <translation>Diferencia en el recipiente %1</translation>
    </message>
    <message>
        <source>caught − common output × predicted</source>
        <translation>captado − entrega común × previsto</translation>
    </message>
    <message>
        <source>caught: %1, from the catch test</source>
        <translation>captado: %1, de la prueba de captación</translation>
    </message>
    <message>
        <source>predicted: %1, from the plan</source>
        <translation>previsto: %1, del plano</translation>
    </message>
    <message>
        <source>common output: %1, from all cans</source>
        <translation>entrega común: %1, de todos los recipientes</translation>
    </message>
    <message>
        <source>explained by the outputs found: %1</source>
        <translation>explicado por las entregas halladas: %1</translation>
    </message>
    <message>
        <source>%1 heads reach it</source>
        <translation>lo alcanzan %1 aspersores</translation>
    </message>
    <message>
        <source>DU, low quarter, caught</source>
        <translation>UD del cuarto inferior, captada</translation>
    </message>
    <message>
        <source>mean of the lowest quarter of the catches ÷ mean</source>
        <translation>media del cuarto inferior de lo captado ÷ media</translation>
    </message>
    <message>
        <source>mean catch: %1</source>
        <translation>media captada: %1</translation>
    </message>
    <message>
        <source>DU, same cans, design</source>
        <translation>UD, mismos puntos, diseño</translation>
    </message>
    <message>
        <source>the same of the predicted depths at the same cans</source>
        <translation>lo mismo con las láminas previstas en los mismos recipientes</translation>
    </message>
    <message>
        <source>mean predicted: %1</source>
        <translation>media prevista: %1</translation>
    </message>
    <message>
        <source>All heads together</source>
        <translation>Todos los aspersores</translation>
    </message>
    <message>
        <source>median of caught ÷ predicted; takes up pressure, evaporation and run time that all heads share</source>
        <translation>mediana de captado ÷ previsto; recoge la presión, la evaporación y el tiempo de riego que todos comparten</translation>
    </message>
    <message>
        <source>Difference, before and after</source>
        <translation>Diferencia, antes y después</translation>
    </message>
    <message>
        <source>root mean square of what the design leaves unexplained at the cans, and what the outputs found leave</source>
        <translation>media cuadrática de lo que el diseño deja sin explicar en los recipientes, y de lo que dejan las entregas halladas</translation>
    </message>
    <message>
        <source>Heads less / more</source>
        <translation>Aspersores menos / más</translation>
    </message>
    <message>
        <source>output surely beyond the limits of plan_limits.csv, as shares of the common output</source>
        <translation>entrega con seguridad fuera de los límites de plan_limits.csv, como parte de la entrega común</translation>
    </message>
    <message>
        <source>Heads that cannot be told</source>
        <translation>Aspersores sin veredicto</translation>
    </message>
    <message>
        <source>no can in reach, or cans that see the head only together with others</source>
        <translation>ningún recipiente a su alcance, o recipientes que solo ven el aspersor junto con otros</translation>
    </message>
    <message>
        <source>Can %1: caught %2, predicted %3, %4</source>
        <translation>Recipiente %1: captado %2, previsto %3, %4</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>California model landscape ordinance, 2009 text</source>
        <translation>Ordenanza modelo de paisajes de California, texto de 2009</translation>
    </message>
    <message>
        <source>California model landscape ordinance, 2015 text, existing landscape</source>
        <translation>Ordenanza modelo de paisajes de California, texto de 2015, paisaje existente</translation>
    </message>
    <message>
        <source>California model landscape ordinance, 2015 text, non-residential</source>
        <translation>Ordenanza modelo de paisajes de California, texto de 2015, no residencial</translation>
    </message>
    <message>
        <source>California model landscape ordinance, 2015 text, residential</source>
        <translation>Ordenanza modelo de paisajes de California, texto de 2015, residencial</translation>
    </message>
    <message>
        <source>General budget at a target uniformity</source>
        <translation>Presupuesto general con una uniformidad objetivo</translation>
    </message>
    <message>
        <source>Allowance of 80 % of reference ET, less effective rain</source>
        <translation>Asignación del 80 % de la ET de referencia, menos la lluvia efectiva</translation>
    </message>
    <message>
        <source>Tolland Reach Water District, large turf allotment (invented)</source>
        <translation>Tolland Reach Water District, cuota para césped grande (inventado)</translation>
    </message>
    <message>
        <source>traveller</source>
        <translation>cañón viajero</translation>
    </message>
    <message>
        <source>Harrow County Irrigation Fund, half the cost of controllers (invented)</source>
        <translation>Fondo de Riego del Condado de Harrow, la mitad del costo de los controladores (inventado)</translation>
    </message>
    <message>
        <source>Tolland Reach Water District, pay for water saved (invented)</source>
        <translation>Distrito de Agua de Tolland Reach, pago por agua ahorrada (inventado)</translation>
    </message>
    <message>
        <source>Tolland Reach Water District, even water on sports turf (invented)</source>
        <translation>Distrito de Agua de Tolland Reach, riego parejo en césped deportivo (inventado)</translation>
    </message>
    <message>
        <source>sod farms and campuses</source>
        <translation>granjas de tepes y recintos de campus</translation>
    </message>
    <message>
        <source>signed by the auditor</source>
        <translation>firmado por el auditor</translation>
    </message>
    <message>
        <source>two photos of the controllers in place</source>
        <translation>dos fotos de los controladores instalados</translation>
    </message>
    <message>
        <source>an invoice</source>
        <translation>una factura</translation>
    </message>
    <message>
        <source>a mean catch of 0.1 in or more in each test</source>
        <translation>una captación media de 0.1 in o más en cada prueba</translation>
    </message>
    <message>
        <source>half of the invoices</source>
        <translation>la mitad de las facturas</translation>
    </message>
    <message>
        <source>at least one acre of turf</source>
        <translation>al menos un acre de césped</translation>
    </message>
    <message>
        <source>a turbine or magnetic meter</source>
        <translation>un medidor de turbina o magnético</translation>
    </message>
    <message>
        <source>water saved: 10 % or more, with a probability of 90 %</source>
        <translation>agua ahorrada: 10 % o más, con una probabilidad del 90 %</translation>
    </message>
    <message>
        <source>claimed figures follow from the raw data</source>
        <translation>las cifras declaradas salen de los datos originales</translation>
    </message>
    <message>
        <source>water saved in the months after the work</source>
        <translation>agua ahorrada en los meses posteriores a la obra</translation>
    </message>
    <message>
        <source>sports grounds, campuses and parks</source>
        <translation>campos deportivos, recintos de campus y parques</translation>
    </message>
    <message>
        <source>at least half an acre of turf</source>
        <translation>al menos medio acre de césped</translation>
    </message>
    <message>
        <source>an invoice for the devices</source>
        <translation>una factura de los dispositivos</translation>
    </message>
    <message>
        <source>the auditor&apos;s certification is valid on the day of each test</source>
        <translation>la certificación del auditor es válida el día de cada prueba</translation>
    </message>
    <message>
        <source>a catch test before the work</source>
        <translation>una prueba de captación antes de la obra</translation>
    </message>
    <message>
        <source>a catch test after the work</source>
        <translation>una prueba de captación después de la obra</translation>
    </message>
    <message>
        <source>at least 20 cans in each test</source>
        <translation>al menos 20 recipientes en cada prueba</translation>
    </message>
    <message>
        <source>wind of 5 mph or less in each test</source>
        <translation>viento de 5 mph o menos en cada prueba</translation>
    </message>
    <message>
        <source>the test after the work is no older than 400 days</source>
        <translation>la prueba posterior a la obra no tiene más de 400 días</translation>
    </message>
    <message>
        <source>DU of the low quarter of 0.70 or more after the work, with a probability of 80 %</source>
        <translation>UD del cuarto inferior de 0.70 o más después de la obra, con una probabilidad del 80 %</translation>
    </message>
    <message>
        <source>DU of the low quarter up by 0.05 or more</source>
        <translation>UD del cuarto inferior 0.05 o más por encima de la anterior</translation>
    </message>
    <message>
        <source>nozzles</source>
        <translation>boquillas</translation>
    </message>
    <message>
        <source>pressure regulators</source>
        <translation>reguladores de presión</translation>
    </message>
    <message>
        <source>Review: approve.</source>
        <translation>Revisión: aprobar.</translation>
    </message>
    <message>
        <source>Review: decline.</source>
        <translation>Revisión: denegar.</translation>
    </message>
    <message>
        <source>Review: send more.</source>
        <translation>Revisión: pedir más.</translation>
    </message>
    <message>
        <source>Review: none.</source>
        <translation>Revisión: solo cifras.</translation>
    </message>
    <message>
        <source>Taken up again.</source>
        <translation>Retomada.</translation>
    </message>
    <message>
        <source>cut to a share of the invoices</source>
        <translation>recortado a una parte de las facturas</translation>
    </message>
    <message>
        <source>cut to what the area allows</source>
        <translation>recortado a lo que permite la superficie</translation>
    </message>
    <message>
        <source>cut to the most that one application gets</source>
        <translation>recortado a lo máximo que recibe una solicitud</translation>
    </message>
    <message>
        <source>more than the program has left</source>
        <translation>más de lo que le queda al programa</translation>
    </message>
    <message>
        <source>coarse sand</source>
        <translation>arena gruesa</translation>
    </message>
    <message>
        <source>medium sand</source>
        <translation>arena media</translation>
    </message>
    <message>
        <source>fine sand</source>
        <translation>arena fina</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>arena</translation>
    </message>
    <message>
        <source>loamy sand</source>
        <translation>arena franca</translation>
    </message>
    <message>
        <source>sandy loam</source>
        <translation>franco arenoso</translation>
    </message>
    <message>
        <source>fine sandy loam</source>
        <translation>franco arenoso fino</translation>
    </message>
    <message>
        <source>very fine sandy loam</source>
        <translation>franco arenoso muy fino</translation>
    </message>
    <message>
        <source>loam</source>
        <translation>franco</translation>
    </message>
    <message>
        <source>silt loam</source>
        <translation>franco limoso</translation>
    </message>
    <message>
        <source>silt</source>
        <translation>limo</translation>
    </message>
    <message>
        <source>sandy clay loam</source>
        <translation>franco arcillo arenoso</translation>
    </message>
    <message>
        <source>clay loam</source>
        <translation>franco arcilloso</translation>
    </message>
    <message>
        <source>silty clay loam</source>
        <translation>franco arcillo limoso</translation>
    </message>
    <message>
        <source>sandy clay</source>
        <translation>arcilla arenosa</translation>
    </message>
    <message>
        <source>silty clay</source>
        <translation>arcilla limosa</translation>
    </message>
    <message>
        <source>clay</source>
        <translation>arcilla</translation>
    </message>
    <message>
        <source>rotor</source>
        <translation>de turbina</translation>
    </message>
    <message>
        <source>impact</source>
        <translation>de impacto</translation>
    </message>
    <message>
        <source>spray</source>
        <translation>difusor</translation>
    </message>
    <message>
        <source>drip</source>
        <translation>goteo</translation>
    </message>
    <message>
        <source>pivot</source>
        <translation>pivote</translation>
    </message>
    <message>
        <source>solid set</source>
        <translation>cobertura total</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>no se conoce</translation>
    </message>
    <message>
        <source>cool-season</source>
        <translation>de clima frío</translation>
    </message>
    <message>
        <source>warm-season</source>
        <translation>de clima cálido</translation>
    </message>
    <message>
        <source>cool season</source>
        <translation>de clima frío</translation>
    </message>
    <message>
        <source>warm season</source>
        <translation>de clima cálido</translation>
    </message>
    <message>
        <source>minor</source>
        <translation>leve</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>mediano</translation>
    </message>
    <message>
        <source>severe</source>
        <translation>grave</translation>
    </message>
    <message>
        <source>head tilted</source>
        <translation>aspersor inclinado</translation>
    </message>
    <message>
        <source>head sunken</source>
        <translation>aspersor hundido</translation>
    </message>
    <message>
        <source>head too high</source>
        <translation>aspersor demasiado alto</translation>
    </message>
    <message>
        <source>nozzle clogged</source>
        <translation>boquilla obstruida</translation>
    </message>
    <message>
        <source>nozzle worn</source>
        <translation>boquilla gastada</translation>
    </message>
    <message>
        <source>nozzles mixed</source>
        <translation>boquillas mezcladas</translation>
    </message>
    <message>
        <source>nozzle wrong for its arc</source>
        <translation>boquilla que no corresponde a su arco</translation>
    </message>
    <message>
        <source>arc off</source>
        <translation>arco desajustado</translation>
    </message>
    <message>
        <source>not rotating</source>
        <translation>no gira</translation>
    </message>
    <message>
        <source>does not retract</source>
        <translation>no se retrae</translation>
    </message>
    <message>
        <source>leaking at the head</source>
        <translation>fuga en el aspersor</translation>
    </message>
    <message>
        <source>drains at the lowest head</source>
        <translation>desagua por el aspersor más bajo</translation>
    </message>
    <message>
        <source>head broken or missing</source>
        <translation>aspersor roto o ausente</translation>
    </message>
    <message>
        <source>leak in the line</source>
        <translation>fuga en la tubería</translation>
    </message>
    <message>
        <source>valve does not close or open</source>
        <translation>la válvula no cierra o no abre</translation>
    </message>
    <message>
        <source>blocked by plants or things</source>
        <translation>tapado por plantas u objetos</translation>
    </message>
    <message>
        <source>misting</source>
        <translation>neblina</translation>
    </message>
    <message>
        <source>pressure too low</source>
        <translation>presión demasiado baja</translation>
    </message>
    <message>
        <source>overspray onto paving or buildings</source>
        <translation>riega pavimento o edificios</translation>
    </message>
    <message>
        <source>reclaimed water off target</source>
        <translation>agua regenerada fuera del césped</translation>
    </message>
    <message>
        <source>runoff</source>
        <translation>escorrentía</translation>
    </message>
    <message>
        <source>heads too far apart</source>
        <translation>aspersores demasiado separados</translation>
    </message>
    <message>
        <source>backflow protection missing or untested</source>
        <translation>falta o sin revisar la protección contra reflujo</translation>
    </message>
</context>
<context>
    <name>EvidenceView</name>
    <message>
        <source>Catches as typed</source>
        <translation>Lo captado, como se escribió</translation>
    </message>
    <message>
        <source>(left out: %1)</source>
        <translation>(excluido: %1)</translation>
    </message>
    <message>
        <source>Meter %1, register in %2</source>
        <translation>Medidor %1, registro en %2</translation>
    </message>
    <message>
        <source>Read at (UTC)</source>
        <translation>Leído (UTC)</translation>
    </message>
    <message>
        <source>Register</source>
        <translation>Registro</translation>
    </message>
    <message>
        <source>Weather of station %1 as typed</source>
        <translation>Clima de la estación %1, como se escribió</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Rain, %1</source>
        <translation>Lluvia, %1</translation>
    </message>
    <message>
        <source>Reference ET, %1</source>
        <translation>ET de referencia, %1</translation>
    </message>
    <message>
        <source>Wind, %1</source>
        <translation>Viento, %1</translation>
    </message>
    <message>
        <source>Areas</source>
        <translation>Zonas</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Size as typed</source>
        <translation>Superficie como se escribió</translation>
    </message>
    <message>
        <source>Sector</source>
        <translation>Sector</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Medidor</translation>
    </message>
    <message>
        <source>Invoices</source>
        <translation>Facturas</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Attachment</source>
        <translation>Adjunto</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Dispositivos</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Attachments</source>
        <translation>Adjuntos</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Bytes</source>
        <translation>Bytes</translation>
    </message>
    <message>
        <source>SHA-256</source>
        <translation>SHA-256</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1: claimed %2, recomputed %3, %4</source>
        <translation>%1: declarado %2, recalculado %3, %4</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Can</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>%1
%2, %3</source>
        <translation>%1
%2, %3</translation>
    </message>
</context>
<context>
    <name>FindingWords</name>
    <message>
        <source>sites</source>
        <translation>sitios</translation>
    </message>
    <message>
        <source>meters</source>
        <translation>medidores</translation>
    </message>
    <message>
        <source>exchanges of meters</source>
        <translation>cambios de medidor</translation>
    </message>
    <message>
        <source>areas</source>
        <translation>zonas</translation>
    </message>
    <message>
        <source>weather stations</source>
        <translation>estaciones meteorológicas</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>lecturas</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>catches</source>
        <translation>captaciones</translation>
    </message>
    <message>
        <source>bills</source>
        <translation>facturas</translation>
    </message>
    <message>
        <source>plantings</source>
        <translation>plantaciones</translation>
    </message>
    <message>
        <source>prices of water</source>
        <translation>precios del agua</translation>
    </message>
    <message>
        <source>prices of energy</source>
        <translation>precios de la energía</translation>
    </message>
    <message>
        <source>pumps</source>
        <translation>bombas</translation>
    </message>
    <message>
        <source>stations</source>
        <translation>estaciones</translation>
    </message>
    <message>
        <source>watering rules</source>
        <translation>reglas de riego</translation>
    </message>
    <message>
        <source>settings of areas</source>
        <translation>ajustes de zonas</translation>
    </message>
    <message>
        <source>hourly weather</source>
        <translation>tiempo por horas</translation>
    </message>
    <message>
        <source>pressures</source>
        <translation>presiones</translation>
    </message>
    <message>
        <source>findings</source>
        <translation>hallazgos</translation>
    </message>
</context>
<context>
    <name>ImportPlanText</name>
    <message>
        <source>Say what kind of table this is.</source>
        <translation>Indique qué tipo de tabla es.</translation>
    </message>
    <message>
        <source>Point at the column that holds: %1</source>
        <translation>Señale la columna que contiene: %1</translation>
    </message>
</context>
<context>
    <name>ImportRun</name>
    <message>
        <source>Where they differ</source>
        <translation>Dónde difieren</translation>
    </message>
</context>
<context>
    <name>MonthWords</name>
    <message>
        <source>Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec</source>
        <translation>ene feb mar abr may jun jul ago sep oct nov dic</translation>
    </message>
</context>
<context>
    <name>ReviewView</name>
    <message>
        <source>= agrees</source>
        <translation>= concuerda</translation>
    </message>
    <message>
        <source>≈ explained</source>
        <translation>≈ explicado</translation>
    </message>
    <message>
        <source>≠ differs</source>
        <translation>≠ difiere</translation>
    </message>
    <message>
        <source>? cannot tell</source>
        <translation>? no se puede decir</translation>
    </message>
    <message>
        <source>✓ met</source>
        <translation>✓ cumplida</translation>
    </message>
    <message>
        <source>✗ not met</source>
        <translation>✗ no cumplida</translation>
    </message>
    <message>
        <source>DU, low quarter</source>
        <translation>UD del cuarto inferior</translation>
    </message>
    <message>
        <source>mean of the lowest quarter of the catches ÷ mean</source>
        <translation>media del cuarto inferior de lo captado ÷ media</translation>
    </message>
    <message>
        <source>DU, low half</source>
        <translation>UD de la mitad inferior</translation>
    </message>
    <message>
        <source>mean of the lower half of the catches ÷ mean</source>
        <translation>media de la mitad inferior de lo captado ÷ media</translation>
    </message>
    <message>
        <source>Uniformity coefficient</source>
        <translation>Coeficiente de uniformidad</translation>
    </message>
    <message>
        <source>1 − mean distance from the mean ÷ mean</source>
        <translation>1 − desviación media respecto de la media ÷ media</translation>
    </message>
    <message>
        <source>Mean depth</source>
        <translation>Lámina media</translation>
    </message>
    <message>
        <source>mean of the catches</source>
        <translation>media de lo captado</translation>
    </message>
    <message>
        <source>Net rate</source>
        <translation>Tasa neta</translation>
    </message>
    <message>
        <source>mean depth ÷ run time</source>
        <translation>lámina media ÷ tiempo de riego</translation>
    </message>
    <message>
        <source>Cans that count</source>
        <translation>Recipientes que cuentan</translation>
    </message>
    <message>
        <source>cans read and not left out</source>
        <translation>recipientes leídos y no excluidos</translation>
    </message>
    <message>
        <source>Size of the area</source>
        <translation>Superficie de la zona</translation>
    </message>
    <message>
        <source>area within the drawn outline</source>
        <translation>superficie dentro del contorno dibujado</translation>
    </message>
    <message>
        <source>Use before the change</source>
        <translation>Uso antes del cambio</translation>
    </message>
    <message>
        <source>sum of the metered months before it</source>
        <translation>suma de los meses medidos antes de él</translation>
    </message>
    <message>
        <source>Use after the change</source>
        <translation>Uso después del cambio</translation>
    </message>
    <message>
        <source>sum of the metered months after it</source>
        <translation>suma de los meses medidos después de él</translation>
    </message>
    <message>
        <source>Water saved</source>
        <translation>Agua ahorrada</translation>
    </message>
    <message>
        <source>use to be expected from the weather − use after the change</source>
        <translation>uso esperado según el clima − uso después del cambio</translation>
    </message>
    <message>
        <source>Share of water saved</source>
        <translation>Parte de agua ahorrada</translation>
    </message>
    <message>
        <source>water saved ÷ use to be expected from the weather</source>
        <translation>agua ahorrada ÷ uso esperado según el clima</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>sum of the invoices</source>
        <translation>suma de las facturas</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Dispositivos</translation>
    </message>
    <message>
        <source>sum over the list of devices</source>
        <translation>suma de la lista de dispositivos</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>claimed: %1 %2, as typed by the sender</source>
        <translation>declarado: %1 %2, como lo escribió el remitente</translation>
    </message>
    <message>
        <source>raw data: %1, from the filing</source>
        <translation>datos originales: %1, del expediente</translation>
    </message>
    <message>
        <source>verdict: %1, %2</source>
        <translation>veredicto: %1, %2</translation>
    </message>
    <message>
        <source>quarter rule %1</source>
        <translation>regla del cuarto %1</translation>
    </message>
    <message>
        <source>the filing %1, worked out again here</source>
        <translation>el expediente %1, calculado aquí de nuevo</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>SHA-256</source>
        <translation>SHA-256</translation>
    </message>
    <message>
        <source>received</source>
        <translation>recibida</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>incompleta</translation>
    </message>
    <message>
        <source>under review</source>
        <translation>en revisión</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>aprobada</translation>
    </message>
    <message>
        <source>declined</source>
        <translation>denegada</translation>
    </message>
    <message>
        <source>paid</source>
        <translation>pagada</translation>
    </message>
    <message>
        <source>✓ approve</source>
        <translation>✓ aprobar</translation>
    </message>
    <message>
        <source>✗ decline</source>
        <translation>✗ denegar</translation>
    </message>
    <message>
        <source>? ask for more</source>
        <translation>? pedir más</translation>
    </message>
    <message>
        <source>figures only</source>
        <translation>solo cifras</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Risk</source>
        <translation>Riesgo</translation>
    </message>
    <message>
        <source>If approved</source>
        <translation>Si se aprueba</translation>
    </message>
    <message>
        <source>Risk points of %1</source>
        <translation>Puntos de riesgo de %1</translation>
    </message>
    <message>
        <source>3 for each claim that differs, 2 for each question, 1 for each rule that cannot be told</source>
        <translation>3 por cada cifra que difiere, 2 por cada pregunta, 1 por cada regla de la que nada se puede decir</translation>
    </message>
    <message>
        <source>only puts the work in order: points × money asked for</source>
        <translation>solo ordena el trabajo: puntos × dinero solicitado</translation>
    </message>
    <message>
        <source>chosen for this program, not published</source>
        <translation>elegido para este programa, no publicado</translation>
    </message>
    <message>
        <source>Claim</source>
        <translation>Cifra</translation>
    </message>
    <message>
        <source>Claimed</source>
        <translation>Declarado</translation>
    </message>
    <message>
        <source>Recomputed</source>
        <translation>Recalculado</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Veredicto</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regla</translation>
    </message>
    <message>
        <source>Please send</source>
        <translation>Por favor envíe</translation>
    </message>
    <message>
        <source>Question to the sender</source>
        <translation>Pregunta al remitente</translation>
    </message>
    <message>
        <source>Where to look</source>
        <translation>Dónde mirar</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Concepto</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Cálculo</translation>
    </message>
    <message>
        <source>Payment, were it approved</source>
        <translation>Pago, si se aprobara</translation>
    </message>
    <message>
        <source>When (UTC)</source>
        <translation>Cuándo (UTC)</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>please send: %1</source>
        <translation>por favor envíe: %1</translation>
    </message>
    <message>
        <source>every rule of the program is met</source>
        <translation>se cumplen todas las reglas del programa</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Caso</translation>
    </message>
    <message>
        <source>Status, rules</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>Filings without an application: %1</source>
        <translation>Expedientes sin solicitud: %1</translation>
    </message>
    <message>
        <source>Filing</source>
        <translation>Expediente</translation>
    </message>
    <message>
        <source>Came in (UTC)</source>
        <translation>Llegó (UTC)</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>sin firma</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>firmado</translation>
    </message>
</context>
<context>
    <name>ScheduleView</name>
    <message>
        <source>%1, station %2, %3</source>
        <translation>%1, estación %2, %3</translation>
    </message>
    <message>
        <source>rate: %1, from %2</source>
        <translation>tasa: %1, de %2</translation>
    </message>
    <message>
        <source>net need of a week: %1, from the weather of the months chosen</source>
        <translation>necesidad neta de una semana: %1, del clima de los meses elegidos</translation>
    </message>
    <message>
        <source>gross, for uneven water: %1, from net × run-time multiplier</source>
        <translation>bruta, por el riego desigual: %1, de neta × multiplicador de tiempo</translation>
    </message>
    <message>
        <source>days between irrigations that the soil allows: %1, from the soil of area %2</source>
        <translation>días entre riegos que permite el suelo: %1, del suelo de la zona %2</translation>
    </message>
    <message>
        <source>times a week: %1; cycles each time: %2 of %3 min, soak %4 min</source>
        <translation>veces por semana: %1; ciclos cada vez: %2 de %3 min, pausa %4 min</translation>
    </message>
    <message>
        <source>allowed: %1</source>
        <translation>permitido: %1</translation>
    </message>
    <message>
        <source>gross depth of a week ÷ times a week ÷ rate, in whole minutes, × times a week</source>
        <translation>lámina bruta de una semana ÷ veces por semana ÷ tasa, en minutos enteros, × veces por semana</translation>
    </message>
    <message>
        <source>Minutes a week</source>
        <translation>Minutos por semana</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Does not fit, %1</source>
        <translation>No cabe, %1</translation>
    </message>
    <message>
        <source>%1 min a week (%2)</source>
        <translation>%1 min por semana (%2)</translation>
    </message>
    <message>
        <source>minutes run beyond the end of the window, summed over the days of a week</source>
        <translation>minutos que pasan del fin del horario, sumados sobre los días de una semana</translation>
    </message>
    <message>
        <source>Mon Tue Wed Thu Fri Sat Sun</source>
        <translation>lun mar mié jue vie sáb dom</translation>
    </message>
    <message>
        <source>%1, %2–%3, %4 at once</source>
        <translation>%1, %2–%3, %4 a la vez</translation>
    </message>
    <message>
        <source>Station, %1</source>
        <translation>Estación, %1</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Estación</translation>
    </message>
    <message>
        <source>Does not fit</source>
        <translation>No cabe</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Tasa</translation>
    </message>
    <message>
        <source>Net a week</source>
        <translation>Neta semanal</translation>
    </message>
    <message>
        <source>Gross a week</source>
        <translation>Bruta semanal</translation>
    </message>
    <message>
        <source>Days between</source>
        <translation>Días entre riegos</translation>
    </message>
    <message>
        <source>Times a week</source>
        <translation>Veces por semana</translation>
    </message>
    <message>
        <source>Cycles × min</source>
        <translation>Ciclos × min</translation>
    </message>
    <message>
        <source>Soak, min</source>
        <translation>Pausa, min</translation>
    </message>
    <message>
        <source>Min a week</source>
        <translation>Min por semana</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>as tested or entered</source>
        <translation>según la prueba o como se introdujo</translation>
    </message>
    <message>
        <source>need of the month × 7 ÷ days of the month</source>
        <translation>necesidad del mes × 7 ÷ días del mes</translation>
    </message>
    <message>
        <source>net a week × run-time multiplier of the area</source>
        <translation>neta semanal × multiplicador de tiempo de la zona</translation>
    </message>
    <message>
        <source>allowed depletion × available water ÷ ET of a day, whole days, 1 to 7</source>
        <translation>agotamiento permitido × agua disponible ÷ ET de un día, días enteros, 1 a 7</translation>
    </message>
    <message>
        <source>7 ÷ days between, rounded up, not more than the days allowed</source>
        <translation>7 ÷ días entre riegos, hacia arriba, no más que los días permitidos</translation>
    </message>
    <message>
        <source>Cycles</source>
        <translation>Ciclos</translation>
    </message>
    <message>
        <source>run ÷ longest run before water leaves the ground, rounded up</source>
        <translation>riego ÷ riego más largo antes de que el agua escurra, hacia arriba</translation>
    </message>
    <message>
        <source>Soak</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>water that may stand ÷ intake rate of the soil</source>
        <translation>agua que puede quedar encharcada ÷ infiltración del suelo</translation>
    </message>
    <message>
        <source>(too few for the soil)</source>
        <translation>(pocos para el suelo)</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Comienzo</translation>
    </message>
    <message>
        <source>After opening</source>
        <translation>Tras la apertura</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutos</translation>
    </message>
    <message>
        <source>Cycle</source>
        <translation>Ciclo</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Stations scheduled</source>
        <translation>Estaciones programadas</translation>
    </message>
    <message>
        <source>stations with a known rate on an area with a known need; an area that was tested and has none counts as one</source>
        <translation>estaciones con tasa conocida en una zona con necesidad conocida; una zona probada que no tiene ninguna cuenta como una</translation>
    </message>
    <message>
        <source>Months known</source>
        <translation>Meses conocidos</translation>
    </message>
    <message>
        <source>calendar months whose need is known for every area, means over the years chosen</source>
        <translation>meses cuya necesidad se conoce en todas las zonas, medias de los años elegidos</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Excluidas</translation>
    </message>
    <message>
        <source>stations without a rate or a need, areas without a station</source>
        <translation>estaciones sin tasa o sin necesidad, zonas sin estación</translation>
    </message>
    <message>
        <source>Water window</source>
        <translation>Horario de riego</translation>
    </message>
    <message>
        <source>none kept</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>every run fits</source>
        <translation>todo cabe</translation>
    </message>
    <message>
        <source>%1: %2 minutes a week, %3 of the runs, do not fit into the window.</source>
        <translation>%1: %2 minutos por semana, %3 de los riegos, no caben en el horario.</translation>
    </message>
    <message>
        <source>Station %1: the soil asks for more days than are allowed in %2.</source>
        <translation>Estación %1: el suelo pide más días de los permitidos en %2.</translation>
    </message>
    <message>
        <source>Left out: %1, %2</source>
        <translation>Excluida: %1, %2</translation>
    </message>
    <message>
        <source>Assumed: %1</source>
        <translation>Supuesto: %1</translation>
    </message>
</context>
<context>
    <name>SeasonView</name>
    <message>
        <source>%1: %2, from %3</source>
        <translation>%1: %2, de %3</translation>
    </message>
    <message>
        <source>By month</source>
        <translation>Por mes</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Uso</translation>
    </message>
    <message>
        <source>register difference × multiplier × unit of the register, summed over the meters</source>
        <translation>diferencia del registro × multiplicador × unidad del registro, sumada sobre los medidores</translation>
    </message>
    <message>
        <source>meters: %1, from the book</source>
        <translation>medidores: %1, del libro</translation>
    </message>
    <message>
        <source>share that was estimated: %1</source>
        <translation>parte estimada: %1</translation>
    </message>
    <message>
        <source>Need of the turf</source>
        <translation>Necesidad del césped</translation>
    </message>
    <message>
        <source>(reference ET × landscape coefficient − effective rain, not below 0) × area, month by month</source>
        <translation>(ET de referencia × coeficiente de paisaje − lluvia efectiva, no menos de 0) × área, mes a mes</translation>
    </message>
    <message>
        <source>reference ET</source>
        <translation>ET de referencia</translation>
    </message>
    <message>
        <source>the weather record</source>
        <translation>el registro del tiempo</translation>
    </message>
    <message>
        <source>effective rain</source>
        <translation>lluvia efectiva</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>need</source>
        <translation>necesidad</translation>
    </message>
    <message>
        <source>this season&apos;s account</source>
        <translation>la cuenta de esta temporada</translation>
    </message>
    <message>
        <source>program: %1</source>
        <translation>programa: %1</translation>
    </message>
    <message>
        <source>Over budget</source>
        <translation>Sobre presupuesto</translation>
    </message>
    <message>
        <source>use − budget, where that is above 0, month by month</source>
        <translation>uso − presupuesto, donde es mayor que 0, mes a mes</translation>
    </message>
    <message>
        <source>use</source>
        <translation>uso</translation>
    </message>
    <message>
        <source>the meters</source>
        <translation>los medidores</translation>
    </message>
    <message>
        <source>budget</source>
        <translation>presupuesto</translation>
    </message>
    <message>
        <source>the program</source>
        <translation>el programa</translation>
    </message>
    <message>
        <source>a month under budget does not pay for one over it</source>
        <translation>un mes por debajo no compensa otro por encima</translation>
    </message>
    <message>
        <source>Reference ET</source>
        <translation>ET de referencia</translation>
    </message>
    <message>
        <source>sum of the days</source>
        <translation>suma de los días</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>Lluvia</translation>
    </message>
    <message>
        <source>of it effective</source>
        <translation>de ella efectiva</translation>
    </message>
    <message>
        <source>the rule below</source>
        <translation>la regla de abajo</translation>
    </message>
    <message>
        <source>Leak</source>
        <translation>Fuga</translation>
    </message>
    <message>
        <source>lowest hour of days on which no hour stood still × 24</source>
        <translation>hora más baja de los días en que ninguna hora estuvo quieta × 24</translation>
    </message>
    <message>
        <source>days that are never zero, see the findings</source>
        <translation>días que nunca llegan a cero, vea los hallazgos</translation>
    </message>
    <message>
        <source>screens of the meter&apos;s own record</source>
        <translation>revisión del registro del propio medidor</translation>
    </message>
    <message>
        <source>Could be saved</source>
        <translation>Se podría ahorrar</translation>
    </message>
    <message>
        <source>avoidable unevenness + off target + leak + over-scheduled</source>
        <translation>desuniformidad evitable + fuera del blanco + fuga + exceso programado</translation>
    </message>
    <message>
        <source>period: %1</source>
        <translation>período: %1</translation>
    </message>
    <message>
        <source>days counted: %1 of %2</source>
        <translation>días contados: %1 de %2</translation>
    </message>
    <message>
        <source>Need</source>
        <translation>Necesidad</translation>
    </message>
    <message>
        <source>Over the season %1 more than the budget went through the meters.</source>
        <translation>En la temporada pasaron por los medidores %1 más que el presupuesto.</translation>
    </message>
    <message>
        <source>What went through the meters, beside what the program grants and the turf needed.</source>
        <translation>Lo que pasó por los medidores, junto a lo que concede el programa y lo que necesitó el césped.</translation>
    </message>
    <message>
        <source>Use so far</source>
        <translation>Uso hasta ahora</translation>
    </message>
    <message>
        <source>Budget so far</source>
        <translation>Presupuesto hasta ahora</translation>
    </message>
    <message>
        <source>Use and budget added up from the first month on; where a month is not known the line ends.</source>
        <translation>Uso y presupuesto acumulados desde el primer mes; donde un mes no se conoce la línea termina.</translation>
    </message>
    <message>
        <source>Used by the turf</source>
        <translation>Usada por el césped</translation>
    </message>
    <message>
        <source>Uneven, unavoidable</source>
        <translation>Desuniforme, inevitable</translation>
    </message>
    <message>
        <source>Uneven, avoidable</source>
        <translation>Desuniforme, evitable</translation>
    </message>
    <message>
        <source>Off target</source>
        <translation>Fuera del blanco</translation>
    </message>
    <message>
        <source>Over-scheduled</source>
        <translation>Exceso programado</translation>
    </message>
    <message>
        <source>Each bar is the metered water of a month, split by where it went; the parts add up to the use.</source>
        <translation>Cada barra es el agua medida de un mes, repartida según adónde fue; las partes suman el uso.</translation>
    </message>
    <message>
        <source>Together</source>
        <translation>En total</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>Multiplier</source>
        <translation>Multiplicador</translation>
    </message>
    <message>
        <source>Run-time multiplier of %1</source>
        <translation>Multiplicador de tiempo de %1</translation>
    </message>
    <message>
        <source>1 ÷ DU of the low half from cans; else the planning value of the head type</source>
        <translation>1 ÷ UD de la mitad inferior de los recipientes; si no, el valor de planificación del tipo de aspersor</translation>
    </message>
    <message>
        <source>catch test %1, from the book</source>
        <translation>prueba de captación %1, del libro</translation>
    </message>
    <message>
        <source>DU, low quarter: %1</source>
        <translation>UD, cuarto inferior: %1</translation>
    </message>
</context>
<context>
    <name>SheetFigures</name>
    <message>
        <source>cans that count: %1 of %2 read, from this sheet</source>
        <translation>recipientes que cuentan: %1 de %2 leídos, de esta hoja</translation>
    </message>
    <message>
        <source>whole cans that fit into a quarter</source>
        <translation>recipientes enteros que caben en un cuarto</translation>
    </message>
    <message>
        <source>the number of cans nearest to a quarter</source>
        <translation>el número de recipientes más cercano a un cuarto</translation>
    </message>
    <message>
        <source>cans until a quarter is reached</source>
        <translation>recipientes hasta alcanzar un cuarto</translation>
    </message>
    <message>
        <source>exactly a quarter, the last can in part</source>
        <translation>exactamente un cuarto, el último en parte</translation>
    </message>
    <message>
        <source>Christiansen coefficient</source>
        <translation>coeficiente de Christiansen</translation>
    </message>
    <message>
        <source>DU, low quarter</source>
        <translation>UD, cuarto inferior</translation>
    </message>
    <message>
        <source>mean of the lowest quarter ÷ mean of all</source>
        <translation>media del cuarto inferior ÷ media de todos</translation>
    </message>
    <message>
        <source>mean of the lowest quarter: %1, from the cans</source>
        <translation>media del cuarto inferior: %1, de los recipientes</translation>
    </message>
    <message>
        <source>mean of all: %1, from the cans</source>
        <translation>media de todos: %1, de los recipientes</translation>
    </message>
    <message>
        <source>the quarter is %1 (%2 cans here)</source>
        <translation>el cuarto es %1 (aquí %2 recipientes)</translation>
    </message>
    <message>
        <source>Irrigation Association, Landscape Irrigation Auditor worksheet</source>
        <translation>Irrigation Association, hoja de trabajo Landscape Irrigation Auditor</translation>
    </message>
    <message>
        <source>DU, low half</source>
        <translation>UD, mitad inferior</translation>
    </message>
    <message>
        <source>mean of the drier half ÷ mean of all</source>
        <translation>media de la mitad más seca ÷ media de todos</translation>
    </message>
    <message>
        <source>mean of the drier half: %1, from the cans</source>
        <translation>media de la mitad más seca: %1, de los recipientes</translation>
    </message>
    <message>
        <source>exactly half; a middle can counts in part</source>
        <translation>exactamente la mitad; un recipiente central cuenta en parte</translation>
    </message>
    <message>
        <source>von Bernuth &amp; Mecham, Defining the Run Time Multiplier</source>
        <translation>von Bernuth y Mecham, Defining the Run Time Multiplier</translation>
    </message>
    <message>
        <source>Uniformity coefficient</source>
        <translation>Coeficiente de uniformidad</translation>
    </message>
    <message>
        <source>1 − mean distance from the mean ÷ mean</source>
        <translation>1 − desviación media respecto a la media ÷ media</translation>
    </message>
    <message>
        <source>Christiansen 1942, in the form of Zoldoske &amp; Solomon 1988</source>
        <translation>Christiansen 1942, en la forma de Zoldoske y Solomon 1988</translation>
    </message>
    <message>
        <source>Mean depth caught</source>
        <translation>Lámina media captada</translation>
    </message>
    <message>
        <source>volume ÷ throat area, mean over the cans</source>
        <translation>volumen ÷ área de la boca, media de los recipientes</translation>
    </message>
    <message>
        <source>throat area: %1, as typed</source>
        <translation>área de la boca: %1, tal como se escribió</translation>
    </message>
    <message>
        <source>definition of depth: volume over area</source>
        <translation>definición de lámina: volumen sobre área</translation>
    </message>
    <message>
        <source>Net application rate</source>
        <translation>Tasa neta de aplicación</translation>
    </message>
    <message>
        <source>mean depth ÷ run time</source>
        <translation>lámina media ÷ tiempo de riego</translation>
    </message>
    <message>
        <source>run time: %1 min, as typed</source>
        <translation>tiempo de riego: %1 min, tal como se escribió</translation>
    </message>
    <message>
        <source>run time: not recorded</source>
        <translation>tiempo de riego: no registrado</translation>
    </message>
    <message>
        <source>Run-time multiplier</source>
        <translation>Multiplicador de tiempo</translation>
    </message>
    <message>
        <source>1 ÷ DU of the low half</source>
        <translation>1 ÷ UD de la mitad inferior</translation>
    </message>
    <message>
        <source>beside it, the linear form from DU of the low quarter: %1</source>
        <translation>junto a él, la forma lineal desde la UD del cuarto inferior: %1</translation>
    </message>
    <message>
        <source>upper bound, 1 ÷ DU of the low quarter: %1</source>
        <translation>cota superior, 1 ÷ UD del cuarto inferior: %1</translation>
    </message>
    <message>
        <source>low-half form where cans exist</source>
        <translation>forma de la mitad inferior donde hay recipientes</translation>
    </message>
    <message>
        <source>von Bernuth &amp; Mecham; linear form: %1</source>
        <translation>von Bernuth y Mecham; forma lineal: %1</translation>
    </message>
    <message>
        <source>in brackets: the %1 interval, cans drawn again 10,000 times (%2)</source>
        <translation>entre paréntesis: el intervalo de %1, recipientes sorteados de nuevo 10,000 veces (%2)</translation>
    </message>
    <message>
        <source>whole cans</source>
        <translation>recipientes enteros</translation>
    </message>
    <message>
        <source>nearest number</source>
        <translation>número más cercano</translation>
    </message>
    <message>
        <source>rounded up</source>
        <translation>redondeado hacia arriba</translation>
    </message>
    <message>
        <source>part of a can</source>
        <translation>parte de un recipiente</translation>
    </message>
</context>
<context>
    <name>SheetLists</name>
    <message>
        <source>%1 (not found)</source>
        <translation>%1 (no se encuentra)</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Qué se vio</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántos</translation>
    </message>
    <message>
        <source>How bad</source>
        <translation>Gravedad</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Corregido</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>yes, before the test</source>
        <translation>sí, antes de la prueba</translation>
    </message>
    <message>
        <source>Where measured</source>
        <translation>Dónde se midió</translation>
    </message>
    <message>
        <source>Pressure, with unit</source>
        <translation>Presión, con unidad</translation>
    </message>
    <message>
        <source>Nozzle from</source>
        <translation>Boquilla desde</translation>
    </message>
    <message>
        <source>Nozzle to</source>
        <translation>Boquilla hasta</translation>
    </message>
    <message>
        <source>Pressures</source>
        <translation>Presiones</translation>
    </message>
    <message>
        <source>The ground was looked over, whatever was found</source>
        <translation>Se revisó el terreno, se hallara algo o no</translation>
    </message>
    <message>
        <source>Inspection</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Weather, soil, what to look at next time</source>
        <translation>Tiempo, suelo, qué mirar la próxima vez</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Add photos…</source>
        <translation>Añadir fotos…</translation>
    </message>
    <message>
        <source>Remove from the list</source>
        <translation>Quitar de la lista</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Añadir fotos</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation>Imágenes (*.jpg *.jpeg *.png)</translation>
    </message>
</context>
<context>
    <name>Shown</name>
    <message>
        <source>not recorded</source>
        <translation>no registrado</translation>
    </message>
</context>
<context>
    <name>audit</name>
    <message>
        <source>can %1: %2</source>
        <translation>recipiente %1: %2</translation>
    </message>
    <message>
        <source>every can dry</source>
        <translation>todos los recipientes secos</translation>
    </message>
    <message>
        <source>water in at least one can</source>
        <translation>agua en al menos un recipiente</translation>
    </message>
    <message>
        <source>a mean depth above zero</source>
        <translation>una lámina media mayor que cero</translation>
    </message>
    <message>
        <source>a target depth above zero</source>
        <translation>una lámina objetivo mayor que cero</translation>
    </message>
    <message>
        <source>a share of 0</source>
        <translation>una parte de 0</translation>
    </message>
    <message>
        <source>a share of the ground above zero</source>
        <translation>una parte del terreno mayor que cero</translation>
    </message>
    <message>
        <source>a finite reading of zero or more</source>
        <translation>una lectura finita de cero o más</translation>
    </message>
    <message>
        <source>no more than the can holds, %1</source>
        <translation>no más de lo que cabe en el recipiente, %1</translation>
    </message>
    <message>
        <source>a catch below %1 mm; is the unit or the throat area right?</source>
        <translation>una captación por debajo de %1 mm; ¿son correctas la unidad y el área de la boca?</translation>
    </message>
    <message>
        <source>the sum over the stations, %1</source>
        <translation>la suma de las estaciones, %1</translation>
    </message>
    <message>
        <source>no position</source>
        <translation>ninguna posición</translation>
    </message>
    <message>
        <source>x and y of every can that counts</source>
        <translation>x e y de cada recipiente que cuenta</translation>
    </message>
    <message>
        <source>half a position</source>
        <translation>media posición</translation>
    </message>
    <message>
        <source>x and y, or neither</source>
        <translation>x e y, o ninguna de las dos</translation>
    </message>
    <message>
        <source>no distance</source>
        <translation>ninguna distancia</translation>
    </message>
    <message>
        <source>a distance along the machine</source>
        <translation>una distancia a lo largo de la máquina</translation>
    </message>
    <message>
        <source>a distance of zero or more</source>
        <translation>una distancia de cero o más</translation>
    </message>
    <message>
        <source>no side</source>
        <translation>ningún lado</translation>
    </message>
    <message>
        <source>left or right of the path, looking along the pull</source>
        <translation>izquierda o derecha de la pasada, mirando en el sentido del avance</translation>
    </message>
    <message>
        <source>a label on every can</source>
        <translation>una etiqueta en cada recipiente</translation>
    </message>
    <message>
        <source>the label a second time</source>
        <translation>la etiqueta por segunda vez</translation>
    </message>
    <message>
        <source>each can once</source>
        <translation>cada recipiente una vez</translation>
    </message>
    <message>
        <source>the same place as can %1</source>
        <translation>el mismo lugar que el recipiente %1</translation>
    </message>
    <message>
        <source>a place of its own for every can</source>
        <translation>un lugar propio para cada recipiente</translation>
    </message>
    <message>
        <source>the distance between neighbouring paths</source>
        <translation>la distancia entre pasadas vecinas</translation>
    </message>
    <message>
        <source>a distance above zero</source>
        <translation>una distancia mayor que cero</translation>
    </message>
    <message>
        <source>at least the can spacing, %1 m</source>
        <translation>al menos la separación de los recipientes, %1 m</translation>
    </message>
    <message>
        <source>a name of its own for every station</source>
        <translation>un nombre propio para cada estación</translation>
    </message>
    <message>
        <source>a run time above zero for station %1</source>
        <translation>un tiempo de riego mayor que cero para la estación %1</translation>
    </message>
    <message>
        <source>one of the stations that ran</source>
        <translation>una de las estaciones que regaron</translation>
    </message>
    <message>
        <source>each station once for a can</source>
        <translation>cada estación una vez por recipiente</translation>
    </message>
    <message>
        <source>no reading after station %1</source>
        <translation>ninguna lectura después de la estación %1</translation>
    </message>
    <message>
        <source>a reading after every station, 0 when the can stayed dry</source>
        <translation>una lectura después de cada estación, 0 si el recipiente quedó seco</translation>
    </message>
    <message>
        <source>a run time above zero</source>
        <translation>un tiempo de riego mayor que cero</translation>
    </message>
    <message>
        <source>an area above zero</source>
        <translation>un área mayor que cero</translation>
    </message>
    <message>
        <source>the throat area of the cans, needed to turn mL into depth</source>
        <translation>el área de la boca de los recipientes, necesaria para pasar de mL a lámina</translation>
    </message>
    <message>
        <source>%1 cans that count</source>
        <translation>%1 recipientes que cuentan</translation>
    </message>
    <message>
        <source>at least four</source>
        <translation>al menos cuatro</translation>
    </message>
    <message>
        <source>water in at least one can: uniformity is undefined</source>
        <translation>agua en al menos un recipiente: la uniformidad no está definida</translation>
    </message>
    <message>
        <source>volumes without a throat area</source>
        <translation>volúmenes sin área de la boca</translation>
    </message>
    <message>
        <source>the throat area of the cans</source>
        <translation>el área de la boca de los recipientes</translation>
    </message>
    <message>
        <source>a finding from the list; the nearest is %1</source>
        <translation>un hallazgo de la lista; el más parecido es %1</translation>
    </message>
    <message>
        <source>a count of one or more</source>
        <translation>una cuenta de uno o más</translation>
    </message>
    <message>
        <source>%1 [%2]</source>
        <translation>%1 [%2]</translation>
    </message>
    <message>
        <source>a pressure above zero</source>
        <translation>una presión mayor que cero</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: %2 a %3</translation>
    </message>
    <message>
        <source>a range from low to high, both above zero</source>
        <translation>un intervalo de menor a mayor, ambos mayores que cero</translation>
    </message>
    <message>
        <source>no pressures</source>
        <translation>ninguna presión</translation>
    </message>
    <message>
        <source>at least one</source>
        <translation>al menos una</translation>
    </message>
    <message>
        <source>a confidence level between 0 and 1</source>
        <translation>un nivel de confianza entre 0 y 1</translation>
    </message>
    <message>
        <source>%1 resamples</source>
        <translation>%1 remuestreos</translation>
    </message>
    <message>
        <source>100 to 10,000,000</source>
        <translation>de 100 a 10,000,000</translation>
    </message>
    <message>
        <source>%1 cans</source>
        <translation>%1 recipientes</translation>
    </message>
    <message>
        <source>cans drawn one by one</source>
        <translation>recipientes sorteados uno por uno</translation>
    </message>
    <message>
        <source>blocks of %1 m of neighbouring cans, wrapped at the edges</source>
        <translation>bloques de %1 m de recipientes vecinos, continuados por los bordes</translation>
    </message>
    <message>
        <source>an inner share to leave out from 0 to below 1</source>
        <translation>una parte interior por excluir, de 0 a menos de 1</translation>
    </message>
    <message>
        <source>%1 cans beyond the inner share</source>
        <translation>%1 recipientes más allá de la parte interior</translation>
    </message>
    <message>
        <source>lateral</source>
        <translation>lateral</translation>
    </message>
    <message>
        <source>length of machine each can stands for</source>
        <translation>longitud de máquina que representa cada recipiente</translation>
    </message>
    <message>
        <source>Christiansen coefficient</source>
        <translation>coeficiente de Christiansen</translation>
    </message>
    <message>
        <source>centre pivot</source>
        <translation>pivote central</translation>
    </message>
    <message>
        <source>Heermann-Hein coefficient</source>
        <translation>coeficiente de Heermann-Hein</translation>
    </message>
    <message>
        <source>distance from the pivot point</source>
        <translation>distancia al punto del pivote</translation>
    </message>
    <message>
        <source>ring area</source>
        <translation>área del anillo</translation>
    </message>
    <message>
        <source>cans within the inner %1 % of the radius are left out</source>
        <translation>los recipientes dentro del %1 % interior del radio se excluyen</translation>
    </message>
    <message>
        <source>traveller</source>
        <translation>cañón viajero</translation>
    </message>
    <message>
        <source>each strip across the lane the same area</source>
        <translation>cada franja de la pasada, la misma área</translation>
    </message>
    <message>
        <source>neighbouring lanes pulled in opposite directions: two lanes shown</source>
        <translation>pasadas vecinas en sentidos opuestos: se muestran dos pasadas</translation>
    </message>
    <message>
        <source>every lane pulled in the same direction</source>
        <translation>todas las pasadas en el mismo sentido</translation>
    </message>
    <message>
        <source>the outermost can still caught %1 % of the largest catch: the row of cans ended before the pattern</source>
        <translation>el recipiente más alejado aún captó el %1 % de la captación mayor: la fila de recipientes terminó antes que el mojado</translation>
    </message>
    <message>
        <source>solid-set grid</source>
        <translation>cuadrícula de aspersión fija</translation>
    </message>
    <message>
        <source>each can the same area</source>
        <translation>cada recipiente, la misma área</translation>
    </message>
    <message>
        <source>irregular positions</source>
        <translation>posiciones irregulares</translation>
    </message>
    <message>
        <source>each can the same area (positions not used)</source>
        <translation>cada recipiente, la misma área (sin usar posiciones)</translation>
    </message>
    <message>
        <source>Voronoi share of the tested ground</source>
        <translation>parte de Voronoi del terreno probado</translation>
    </message>
    <message>
        <source>no outline given: tested ground taken as the cans&apos; hull widened by half the usual distance between neighbours</source>
        <translation>sin contorno: como terreno probado se toma la envolvente de los recipientes, ampliada en la mitad de la distancia usual entre vecinos</translation>
    </message>
    <message>
        <source>a share of the ground between 0 and 1</source>
        <translation>una parte del terreno entre 0 y 1</translation>
    </message>
    <message>
        <source>cans read once</source>
        <translation>recipientes leídos una vez</translation>
    </message>
    <message>
        <source>cans read after every station</source>
        <translation>recipientes leídos después de cada estación</translation>
    </message>
    <message>
        <source>minutes of zero or more</source>
        <translation>minutos de cero o más</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>a flow and a travel speed above zero</source>
        <translation>un caudal y una velocidad de avance mayores que cero</translation>
    </message>
    <message>
        <source>run time of zero</source>
        <translation>tiempo de riego de cero</translation>
    </message>
    <message>
        <source>a run time above zero minutes</source>
        <translation>un tiempo de riego de más de cero minutos</translation>
    </message>
    <message>
        <source>at least four that count</source>
        <translation>al menos cuatro que cuenten</translation>
    </message>
    <message>
        <source>%1 cans do not divide into quarters; low quarter by the rule %2</source>
        <translation>%1 recipientes no se dividen en cuartos; cuarto inferior por la regla %2</translation>
    </message>
    <message>
        <source>one can stands for more than a quarter of the ground</source>
        <translation>un recipiente representa más de un cuarto del terreno</translation>
    </message>
    <message>
        <source>cans in one line</source>
        <translation>recipientes en una sola línea</translation>
    </message>
    <message>
        <source>positions that enclose some ground</source>
        <translation>posiciones que encierren algún terreno</translation>
    </message>
    <message>
        <source>an outline of two corners</source>
        <translation>un contorno de dos esquinas</translation>
    </message>
    <message>
        <source>at least three</source>
        <translation>al menos tres</translation>
    </message>
    <message>
        <source>an outline that crosses itself or has no area</source>
        <translation>un contorno que se cruza o no tiene área</translation>
    </message>
    <message>
        <source>a simple ring</source>
        <translation>un anillo simple</translation>
    </message>
    <message>
        <source>a can at %1</source>
        <translation>un recipiente en %1</translation>
    </message>
    <message>
        <source>cans inside the outline</source>
        <translation>recipientes dentro del contorno</translation>
    </message>
    <message>
        <source>two cans in one place</source>
        <translation>dos recipientes en un mismo lugar</translation>
    </message>
</context>
<context>
    <name>budget</name>
    <message>
        <source>%1 of zero or more</source>
        <translation>%1 de cero o más</translation>
    </message>
    <message>
        <source>a program with basis allowance</source>
        <translation>un programa con base «allowance»</translation>
    </message>
    <message>
        <source>a reference ET</source>
        <translation>una ET de referencia</translation>
    </message>
    <message>
        <source>a landscape coefficient of zero or more</source>
        <translation>un coeficiente de paisaje de cero o más</translation>
    </message>
    <message>
        <source>an effective rain</source>
        <translation>una lluvia efectiva</translation>
    </message>
    <message>
        <source>an area above zero</source>
        <translation>un área mayor que cero</translation>
    </message>
    <message>
        <source>special landscape of zero to the whole landscape area</source>
        <translation>un paisaje especial de cero a toda el área del paisaje</translation>
    </message>
    <message>
        <source>a plant factor of zero or more and an efficiency above zero</source>
        <translation>un factor de planta de cero o más y una eficiencia mayor que cero</translation>
    </message>
    <message>
        <source>no cans</source>
        <translation>ningún recipiente</translation>
    </message>
    <message>
        <source>the cans of a catch test</source>
        <translation>los recipientes de una prueba de captación</translation>
    </message>
    <message>
        <source>used by the turf</source>
        <translation>usada por el césped</translation>
    </message>
    <message>
        <source>uneven application, unavoidable</source>
        <translation>aplicación desigual, inevitable</translation>
    </message>
    <message>
        <source>uneven application, avoidable</source>
        <translation>aplicación desigual, evitable</translation>
    </message>
    <message>
        <source>off target</source>
        <translation>fuera de la zona</translation>
    </message>
    <message>
        <source>leak</source>
        <translation>fuga</translation>
    </message>
    <message>
        <source>over-scheduled</source>
        <translation>programada de más</translation>
    </message>
    <message>
        <source>left in the soil</source>
        <translation>quedó en el suelo</translation>
    </message>
    <message>
        <source>short of the need</source>
        <translation>por debajo de la necesidad</translation>
    </message>
    <message>
        <source>meter %1 twice</source>
        <translation>medidor %1 dos veces</translation>
    </message>
    <message>
        <source>each meter once</source>
        <translation>cada medidor una vez</translation>
    </message>
    <message>
        <source>meter %1 below itself</source>
        <translation>medidor %1 por debajo de sí mismo</translation>
    </message>
    <message>
        <source>a meter above it, or none</source>
        <translation>un medidor por encima, o ninguno</translation>
    </message>
    <message>
        <source>season of %1, %2 to %3</source>
        <translation>temporada de %1, de %2 a %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>ETo x %1, special areas x %2</source>
        <translation>ETo × %1, zonas especiales × %2</translation>
    </message>
    <message>
        <source>%1 - effective rain</source>
        <translation>%1 − lluvia efectiva</translation>
    </message>
    <message>
        <source>%1 - %2 x rain</source>
        <translation>%1 − %2 × lluvia</translation>
    </message>
    <message>
        <source>need</source>
        <translation>necesidad</translation>
    </message>
    <message>
        <source>(%1) x area</source>
        <translation>(%1) × área</translation>
    </message>
    <message>
        <source>%1 x %2 gal per ft2 and inch</source>
        <translation>%1 × %2 gal por ft2 y pulgada</translation>
    </message>
    <message>
        <source>%1 / efficiency %2</source>
        <translation>%1 / eficiencia %2</translation>
    </message>
    <message>
        <source>budget = %1, by the calendar year</source>
        <translation>presupuesto = %1, por año natural</translation>
    </message>
    <message>
        <source>budget = %1, by the month</source>
        <translation>presupuesto = %1, por mes</translation>
    </message>
    <message>
        <source>a program: %1</source>
        <translation>un programa: %1</translation>
    </message>
    <message>
        <source>a known key; the nearest is %1</source>
        <translation>una clave conocida; la más parecida es %1</translation>
    </message>
    <message>
        <source>text</source>
        <translation>texto</translation>
    </message>
    <message>
        <source>a number above %1 and up to %2</source>
        <translation>un número mayor que %1 y de hasta %2</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>uno de: %1</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>this key</source>
        <translation>esta clave</translation>
    </message>
    <message>
        <source>%1 bytes</source>
        <translation>%1 bytes</translation>
    </message>
    <message>
        <source>at most 1 MiB</source>
        <translation>como mucho 1 MiB</translation>
    </message>
    <message>
        <source>the key twice</source>
        <translation>la clave dos veces</translation>
    </message>
    <message>
        <source>it once</source>
        <translation>una sola vez</translation>
    </message>
    <message>
        <source>JSON</source>
        <translation>JSON</translation>
    </message>
    <message>
        <source>a JSON object</source>
        <translation>un objeto JSON</translation>
    </message>
    <message>
        <source>this key only with basis allowance</source>
        <translation>esta clave solo con la base «allowance»</translation>
    </message>
    <message>
        <source>this key only with rain_credit share</source>
        <translation>esta clave solo con rain_credit «share»</translation>
    </message>
    <message>
        <source>this key only with divisor efficiency</source>
        <translation>esta clave solo con el divisor «efficiency»</translation>
    </message>
    <message>
        <source>1, the version of this format</source>
        <translation>1, la versión de este formato</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objeto</translation>
    </message>
    <message>
        <source>pump %1</source>
        <translation>bomba %1</translation>
    </message>
    <message>
        <source>a lift or a pressure</source>
        <translation>una elevación o una presión</translation>
    </message>
    <message>
        <source>pump %1, head %2 m</source>
        <translation>bomba %1, altura %2 m</translation>
    </message>
    <message>
        <source>a total head above zero</source>
        <translation>una altura total mayor que cero</translation>
    </message>
    <message>
        <source>%1 m3, %2 m, efficiency %3</source>
        <translation>%1 m3, %2 m, eficiencia %3</translation>
    </message>
    <message>
        <source>a volume and a head of zero or more and an efficiency above zero</source>
        <translation>un volumen y una altura de cero o más y una eficiencia mayor que cero</translation>
    </message>
    <message>
        <source>available water above 0 and at most 2000 mm</source>
        <translation>agua disponible mayor que 0 y de hasta 2000 mm</translation>
    </message>
    <message>
        <source>a depletion share p between 0 and 1</source>
        <translation>una fracción de agotamiento p entre 0 y 1</translation>
    </message>
    <message>
        <source>a starting depletion from 0 to the available water, %1</source>
        <translation>un agotamiento inicial de 0 al agua disponible, %1</translation>
    </message>
    <message>
        <source>no can</source>
        <translation>ningún recipiente</translation>
    </message>
    <message>
        <source>at least one can</source>
        <translation>al menos un recipiente</translation>
    </message>
    <message>
        <source>a share of the mean of 0 or more</source>
        <translation>una parte de la media de 0 o más</translation>
    </message>
    <message>
        <source>%1 weights</source>
        <translation>%1 pesos</translation>
    </message>
    <message>
        <source>one weight for each of the %1 cans</source>
        <translation>un peso para cada uno de los %1 recipientes</translation>
    </message>
    <message>
        <source>a weight of 0 or more</source>
        <translation>un peso de 0 o más</translation>
    </message>
    <message>
        <source>weights with a sum above 0</source>
        <translation>pesos con una suma mayor que 0</translation>
    </message>
    <message>
        <source>%1 values of %2</source>
        <translation>%1 valores de %2</translation>
    </message>
    <message>
        <source>%1, one for each day</source>
        <translation>%1, uno por día</translation>
    </message>
    <message>
        <source>%1 of 0 mm or more on day %2</source>
        <translation>%1 de 0 mm o más el día %2</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>lluvia</translation>
    </message>
    <message>
        <source>irrigation</source>
        <translation>riego</translation>
    </message>
    <message>
        <source>intake limit</source>
        <translation>límite de infiltración</translation>
    </message>
    <message>
        <source>available water</source>
        <translation>agua disponible</translation>
    </message>
    <message>
        <source>crop ET</source>
        <translation>ET del cultivo</translation>
    </message>
    <message>
        <source>an intake limit</source>
        <translation>un límite de infiltración</translation>
    </message>
    <message>
        <source>a catch of 0 mm or more</source>
        <translation>una captación de 0 mm o más</translation>
    </message>
    <message>
        <source>a mean catch above 0</source>
        <translation>una captación media mayor que 0</translation>
    </message>
    <message>
        <source>a range of months that runs forward</source>
        <translation>un intervalo de meses que avance</translation>
    </message>
    <message>
        <source>area %1 twice</source>
        <translation>zona %1 dos veces</translation>
    </message>
    <message>
        <source>each area once</source>
        <translation>cada zona una vez</translation>
    </message>
    <message>
        <source>area %1 of %2</source>
        <translation>zona %1 de %2</translation>
    </message>
    <message>
        <source>a monthly rain rule: none, share or nrcs</source>
        <translation>una regla de lluvia por mes: none, share o nrcs</translation>
    </message>
    <message>
        <source>pump %1, share %2</source>
        <translation>bomba %1, parte %2</translation>
    </message>
    <message>
        <source>a share from 0 to 1</source>
        <translation>una parte de 0 a 1</translation>
    </message>
    <message>
        <source>no water rates</source>
        <translation>sin tarifas de agua</translation>
    </message>
    <message>
        <source>rates %1</source>
        <translation>tarifas %1</translation>
    </message>
    <message>
        <source>pump %1, head %2 m, efficiency %3</source>
        <translation>bomba %1, altura %2 m, eficiencia %3</translation>
    </message>
    <message>
        <source>water in %1, energy in %2</source>
        <translation>agua en %1, energía en %2</translation>
    </message>
    <message>
        <source>one currency</source>
        <translation>una sola moneda</translation>
    </message>
    <message>
        <source>one account for the site, billed by calendar month; water not used by the turf is valued at the highest tiers reached</source>
        <translation>una cuenta para el sitio, facturada por mes natural; el agua que no usó el césped se valora a los tramos más altos alcanzados</translation>
    </message>
    <message>
        <source>No reference ET for too many days: need and budget are not known.</source>
        <translation>Falta la ET de referencia de demasiados días: la necesidad y el presupuesto no se conocen.</translation>
    </message>
    <message>
        <source>Days without reference ET were filled with the mean of the month&apos;s other days.</source>
        <translation>Los días sin ET de referencia se completaron con la media de los demás días del mes.</translation>
    </message>
    <message>
        <source>On some days an input of the reference ET was replaced or refused.</source>
        <translation>En algunos días un dato de la ET de referencia se reemplazó o se rechazó.</translation>
    </message>
    <message>
        <source>Rain was not recorded for too many days: need is not known under this rain rule.</source>
        <translation>La lluvia no se registró en demasiados días: con esta regla de lluvia la necesidad no se conoce.</translation>
    </message>
    <message>
        <source>Days without a rain record were filled with the mean of the month&apos;s other days.</source>
        <translation>Los días sin registro de lluvia se completaron con la media de los demás días del mes.</translation>
    </message>
    <message>
        <source>The weather record covers a part of the month; only those days are counted.</source>
        <translation>El registro del tiempo abarca una parte del mes; solo se cuentan esos días.</translation>
    </message>
    <message>
        <source>The meter readings cover a part of the month; only those days are counted.</source>
        <translation>Las lecturas del medidor abarcan una parte del mes; solo se cuentan esos días.</translation>
    </message>
    <message>
        <source>The meter record has a gap; need and budget are scaled to the time that was metered.</source>
        <translation>El registro del medidor tiene un hueco; la necesidad y el presupuesto se ajustan al tiempo medido.</translation>
    </message>
    <message>
        <source>No meter: use is not known.</source>
        <translation>Sin medidor: el uso no se conoce.</translation>
    </message>
    <message>
        <source>No meter readings: use is not known.</source>
        <translation>Sin lecturas del medidor: el uso no se conoce.</translation>
    </message>
    <message>
        <source>A part of the volume comes from estimated readings or lies between readings outside the month.</source>
        <translation>Una parte del volumen viene de lecturas estimadas o queda entre lecturas de fuera del mes.</translation>
    </message>
    <message>
        <source>The meter ran backward over the month: there is no account.</source>
        <translation>El medidor giró hacia atrás en el mes: no hay balance.</translation>
    </message>
    <message>
        <source>The submeters add up to more than the meter above them.</source>
        <translation>Los medidores parciales suman más que el medidor general.</translation>
    </message>
    <message>
        <source>The meter serves several areas; its volume was split by area times coefficient.</source>
        <translation>El medidor sirve a varias zonas; su volumen se repartió por superficie por coeficiente.</translation>
    </message>
    <message>
        <source>The landscape coefficient was assumed.</source>
        <translation>El coeficiente de paisaje se supuso.</translation>
    </message>
    <message>
        <source>No catch test: a planning value of the head type stands for the uniformity.</source>
        <translation>Sin prueba de captación: un valor de planificación del tipo de aspersor hace de uniformidad.</translation>
    </message>
    <message>
        <source>Neither a catch test nor a known head type is recorded.</source>
        <translation>No hay registrada ni prueba de captación ni un tipo de aspersor conocido.</translation>
    </message>
    <message>
        <source>The catch test was made after the month.</source>
        <translation>La prueba de captación se hizo después del mes.</translation>
    </message>
    <message>
        <source>The off-target share is not known and was counted as 0.</source>
        <translation>La parte fuera de la zona no se conoce y se contó como 0.</translation>
    </message>
    <message>
        <source>The readings are too far apart to show a leak; it was counted as 0.</source>
        <translation>Las lecturas están demasiado separadas para mostrar una fuga; se contó como 0.</translation>
    </message>
    <message>
        <source>The leak found is larger than the volume and was cut to it.</source>
        <translation>La fuga hallada es mayor que el volumen y se recortó a él.</translation>
    </message>
    <message>
        <source>The need contains the leaching requirement of salty water; rain that leaches is not counted against it, and by cans that water shows as drained.</source>
        <translation>La necesidad incluye el requerimiento de lavado del agua salina; la lluvia que lava no se descuenta de él, y en el balance por recipientes esa agua figura como drenada.</translation>
    </message>
    <message>
        <source>Some areas have no account.</source>
        <translation>Algunas zonas no tienen balance.</translation>
    </message>
    <message>
        <source>Some months have no account.</source>
        <translation>Algunos meses no tienen balance.</translation>
    </message>
    <message>
        <source>%1 and %2 draws</source>
        <translation>%1 y %2 sorteos</translation>
    </message>
    <message>
        <source>100 draws or more, or none by cans</source>
        <translation>100 sorteos o más, o ninguno por recipientes</translation>
    </message>
    <message>
        <source>a confidence between 0 and 1</source>
        <translation>una confianza entre 0 y 1</translation>
    </message>
    <message>
        <source>Monte Carlo, %1 draws (%2 by cans), seed %3, quantiles at %4 %; off-target share, effective rain and shares of a meter are taken as they are</source>
        <translation>Monte Carlo, %1 sorteos (%2 por recipientes), semilla %3, cuantiles al %4 %; la parte fuera de la zona, la lluvia efectiva y las partes de un medidor se toman como están</translation>
    </message>
    <message>
        <source>sizes of the uncertainties: schemas/reference/season_uncertainty.csv</source>
        <translation>tamaños de las incertidumbres: schemas/reference/season_uncertainty.csv</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>area %1</source>
        <translation>zona %1</translation>
    </message>
    <message>
        <source>the weather record</source>
        <translation>el registro del tiempo</translation>
    </message>
    <message>
        <source>an input was replaced or refused on %1</source>
        <translation>un dato se reemplazó o se rechazó en %1</translation>
    </message>
    <message>
        <source>FAO-56 chapter 3</source>
        <translation>FAO-56, capítulo 3</translation>
    </message>
    <message>
        <source>area %1: %2, multiplier %3</source>
        <translation>zona %1: %2, multiplicador %3</translation>
    </message>
    <message>
        <source>area %1: need / (1 - LR), LR %2 from water of %3 dS/m and soil kept at %4 dS/m; reclaimed water falls under local health rules</source>
        <translation>zona %1: necesidad / (1 − RL), RL %2 con agua de %3 dS/m y suelo mantenido en %4 dS/m; el agua regenerada está sujeta a las normas sanitarias locales</translation>
    </message>
    <message>
        <source>Rhoades (1974) as Ayers &amp; Westcot (1985) FAO-29 Eq. 9</source>
        <translation>Rhoades (1974) según Ayers y Westcot (1985), FAO-29, ec. 9</translation>
    </message>
    <message>
        <source>daily root-zone balance at every can, water first, p adjusted to ET, starting half way down the readily available water; no runoff; between readings the meter&apos;s flow is taken as even</source>
        <translation>balance diario de la zona radicular en cada recipiente, primero el agua, p ajustado a la ET, desde la mitad del agua fácilmente disponible; sin escorrentía; entre lecturas el caudal del medidor se toma por uniforme</translation>
    </message>
    <message>
        <source>FAO-56 chapter 8, Eq. 82 to 88</source>
        <translation>FAO-56, capítulo 8, ec. 82 a 88</translation>
    </message>
    <message>
        <source>area %1: holds %2 mm (%3), p %4</source>
        <translation>zona %1: retiene %2 mm (%3), p %4</translation>
    </message>
    <message>
        <source>%1; roots: %2; p: %3</source>
        <translation>%1; raíces: %2; p: %3</translation>
    </message>
    <message>
        <source>Had each day&apos;s water fallen in a single run, up to %1 gal would have run off: the ground takes in about %2 in/h (assumed).</source>
        <translation>Si el agua de cada día hubiera caído en un solo riego, habrían escurrido hasta %1 gal: el suelo absorbe unas %2 in/h (supuesto).</translation>
    </message>
    <message>
        <source>Had each day&apos;s water fallen in a single run, up to %1 gal would have run off: the ground takes in about %2 in/h.</source>
        <translation>Si el agua de cada día hubiera caído en un solo riego, habrían escurrido hasta %1 gal: el suelo absorbe unas %2 in/h.</translation>
    </message>
    <message>
        <source>Cycles with time to soak, as in the base schedule, keep it in place; the account by cans counts none of it.</source>
        <translation>Los ciclos con pausas, como en el programa base, la mantienen en su sitio; el balance por recipientes no cuenta nada de ella.</translation>
    </message>
    <message>
        <source>%1 [%2]</source>
        <translation>%1 [%2]</translation>
    </message>
    <message>
        <source>multiplier method; attainable multiplier %1 at the program&apos;s target uniformity %2</source>
        <translation>método del multiplicador; multiplicador alcanzable %1 con la uniformidad objetivo del programa, %2</translation>
    </message>
    <message>
        <source>derived from the definition of the run-time multiplier</source>
        <translation>deducido de la definición del multiplicador de tiempo</translation>
    </message>
    <message>
        <source>no published rule; the choice is a convention of the report</source>
        <translation>sin regla publicada; la elección es una convención del informe</translation>
    </message>
    <message>
        <source>shared meters split by area x coefficient</source>
        <translation>medidores compartidos repartidos por área × coeficiente</translation>
    </message>
    <message>
        <source>meter readings</source>
        <translation>lecturas del medidor</translation>
    </message>
    <message>
        <source>Its meter %1 is not among the site&apos;s meters.</source>
        <translation>Su medidor %1 no está entre los medidores del sitio.</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>medidor %1</translation>
    </message>
    <message>
        <source>Its record has 1 place that cannot be read as a flow forward; see the meter screens.</source>
        <translation>Su registro tiene 1 lugar que no se puede leer como caudal hacia delante; vea las revisiones del medidor.</translation>
    </message>
    <message>
        <source>Its record has %1 places that cannot be read as a flow forward; see the meter screens.</source>
        <translation>Su registro tiene %1 lugares que no se pueden leer como caudal hacia delante; vea las revisiones del medidor.</translation>
    </message>
    <message>
        <source>What it shows beyond its submeters is in no area&apos;s account.</source>
        <translation>Lo que marca de más que sus medidores parciales no está en el balance de ninguna zona.</translation>
    </message>
    <message>
        <source>It feeds no area; its water is in no area&apos;s account.</source>
        <translation>No abastece a ninguna zona; su agua no está en el balance de ninguna.</translation>
    </message>
    <message>
        <source>a slope from 0 to 100 % for area %1</source>
        <translation>una pendiente del 0 al 100 % para la zona %1</translation>
    </message>
    <message>
        <source>soil not recorded</source>
        <translation>suelo no registrado</translation>
    </message>
    <message>
        <source>soil not in the data</source>
        <translation>suelo que no está en los datos</translation>
    </message>
    <message>
        <source>middle of FAO-56 Table 19, %1</source>
        <translation>punto medio de FAO-56, tabla 19, %1</translation>
    </message>
    <message>
        <source>middle of inches per foot, %1</source>
        <translation>punto medio de pulgadas por pie, %1</translation>
    </message>
    <message>
        <source>a root depth above 0 and at most 2 m for area %1</source>
        <translation>una profundidad de raíces mayor que 0 y de hasta 2 m para la zona %1</translation>
    </message>
    <message>
        <source>the area&apos;s record</source>
        <translation>el registro de la zona</translation>
    </message>
    <message>
        <source>an application rate above 0</source>
        <translation>una tasa de aplicación mayor que 0</translation>
    </message>
    <message>
        <source>one cycle or more</source>
        <translation>un ciclo o más</translation>
    </message>
    <message>
        <source>planning value for %1, linear form</source>
        <translation>valor de planificación para %1, forma lineal</translation>
    </message>
    <message>
        <source>low half of the cans, 1 / DU_LH</source>
        <translation>mitad inferior de los recipientes, 1 / DU_LH</translation>
    </message>
    <message>
        <source>linear form, because half of the cans stayed dry in a test</source>
        <translation>forma lineal, porque la mitad de los recipientes quedó seca en una prueba</translation>
    </message>
    <message>
        <source>%1, mean of the tests of the day</source>
        <translation>%1, media de las pruebas del día</translation>
    </message>
    <message>
        <source>catch test, computed from its cans</source>
        <translation>prueba de captación, calculado con sus recipientes</translation>
    </message>
    <message>
        <source>%1 of 1 or more</source>
        <translation>%1 de 1 o más</translation>
    </message>
    <message>
        <source>a metered volume</source>
        <translation>un volumen medido</translation>
    </message>
    <message>
        <source>a need</source>
        <translation>una necesidad</translation>
    </message>
    <message>
        <source>a leak</source>
        <translation>una fuga</translation>
    </message>
    <message>
        <source>an achieved multiplier</source>
        <translation>un multiplicador logrado</translation>
    </message>
    <message>
        <source>a target multiplier</source>
        <translation>un multiplicador objetivo</translation>
    </message>
    <message>
        <source>%1 to further on</source>
        <translation>%1 en adelante</translation>
    </message>
    <message>
        <source>rate %1, %2</source>
        <translation>tarifa %1, %2</translation>
    </message>
    <message>
        <source>dates that run forward</source>
        <translation>fechas que avancen</translation>
    </message>
    <message>
        <source>rate %1 in %2</source>
        <translation>tarifa %1 en %2</translation>
    </message>
    <message>
        <source>the currency of the site&apos;s other rates, %1</source>
        <translation>la moneda de las demás tarifas del sitio, %1</translation>
    </message>
    <message>
        <source>rates %1 (%2) and %3 (%4)</source>
        <translation>tarifas %1 (%2) y %3 (%4)</translation>
    </message>
    <message>
        <source>rates that do not overlap; both hold on %1</source>
        <translation>tarifas que no se solapen; las dos valen el %1</translation>
    </message>
    <message>
        <source>rate %1</source>
        <translation>tarifa %1</translation>
    </message>
    <message>
        <source>at least one tier</source>
        <translation>al menos un tramo</translation>
    </message>
    <message>
        <source>rate %1: a price of zero or more</source>
        <translation>tarifa %1: un precio de cero o más</translation>
    </message>
    <message>
        <source>a last tier without a limit, and only that one</source>
        <translation>un último tramo sin límite, y solo ese</translation>
    </message>
    <message>
        <source>rate %1, limit %2</source>
        <translation>tarifa %1, límite %2</translation>
    </message>
    <message>
        <source>limits that rise</source>
        <translation>límites que suban</translation>
    </message>
    <message>
        <source>rate %1: a fixed charge of zero or more</source>
        <translation>tarifa %1: un cargo fijo de cero o más</translation>
    </message>
    <message>
        <source>rate %1: a sewer price of zero or more</source>
        <translation>tarifa %1: un precio de alcantarillado de cero o más</translation>
    </message>
    <message>
        <source>a volume of zero or more</source>
        <translation>un volumen de cero o más</translation>
    </message>
    <message>
        <source>rain of %1 mm on %2</source>
        <translation>lluvia de %1 mm el %2</translation>
    </message>
    <message>
        <source>zero or more</source>
        <translation>cero o más</translation>
    </message>
    <message>
        <source>weather of %1 after %2</source>
        <translation>tiempo del %1 después del %2</translation>
    </message>
    <message>
        <source>days in order, none twice</source>
        <translation>días en orden, ninguno dos veces</translation>
    </message>
</context>
<context>
    <name>calendar</name>
    <message>
        <source>January</source>
        <translation>enero</translation>
    </message>
    <message>
        <source>February</source>
        <translation>febrero</translation>
    </message>
    <message>
        <source>March</source>
        <translation>marzo</translation>
    </message>
    <message>
        <source>April</source>
        <translation>abril</translation>
    </message>
    <message>
        <source>May</source>
        <translation>mayo</translation>
    </message>
    <message>
        <source>June</source>
        <translation>junio</translation>
    </message>
    <message>
        <source>July</source>
        <translation>julio</translation>
    </message>
    <message>
        <source>August</source>
        <translation>agosto</translation>
    </message>
    <message>
        <source>September</source>
        <translation>septiembre</translation>
    </message>
    <message>
        <source>October</source>
        <translation>octubre</translation>
    </message>
    <message>
        <source>November</source>
        <translation>noviembre</translation>
    </message>
    <message>
        <source>December</source>
        <translation>diciembre</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>ene</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>feb</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>mar</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>abr</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>jun</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>jul</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>ago</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>sep</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>oct</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>nov</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>dic</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>a POSIX time zone rule, such as PST8PDT,M3.2.0,M11.1.0 or UTC0</source>
        <translation>una regla POSIX de zona horaria, como PST8PDT,M3.2.0,M11.1.0 o UTC0</translation>
    </message>
    <message>
        <source>a time that the clock shows there; this one is skipped in spring (%1)</source>
        <translation>una hora que el reloj muestre allí; esta se salta en primavera (%1)</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>row %1</source>
        <translation>fila %1</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>found &quot;%1&quot;, expected %2</source>
        <translation>se encontró «%1», se esperaba %2</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>character %1</source>
        <translation>carácter %1</translation>
    </message>
    <message>
        <source>byte %1</source>
        <translation>byte %1</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 o %2</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::ApplicationDialog</name>
    <message>
        <source>New application</source>
        <translation>Nueva solicitud</translation>
    </message>
    <message>
        <source>Opened by hand for the filing %1. It is reviewed at once.</source>
        <translation>Abierta a mano para el expediente %1. Se revisa en seguida.</translation>
    </message>
    <message>
        <source>Opened by hand, for what came on paper. Filings can be put into it later.</source>
        <translation>Abierta a mano, para lo que llegó en papel. Después se le pueden añadir expedientes.</translation>
    </message>
    <message>
        <source>&amp;Number</source>
        <translation>&amp;Número</translation>
    </message>
    <message>
        <source>&amp;Received on</source>
        <translation>&amp;Recibida el</translation>
    </message>
    <message>
        <source>&amp;Applicant</source>
        <translation>Solicit&amp;ante</translation>
    </message>
    <message>
        <source>&amp;Site, its code</source>
        <translation>&amp;Sitio, su código</translation>
    </message>
    <message>
        <source>&amp;Program</source>
        <translation>&amp;Programa</translation>
    </message>
    <message>
        <source>N&amp;ote, for the history and the journal</source>
        <translation>N&amp;ota, para el historial y el diario</translation>
    </message>
    <message>
        <source>&amp;Who opens it</source>
        <translation>&amp;Quién la abre</translation>
    </message>
    <message>
        <source>Open the application</source>
        <translation>Abrir la solicitud</translation>
    </message>
    <message>
        <source>Application %1 is in the book.</source>
        <translation>La solicitud %1 está en el libro.</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::AuditPanel</name>
    <message>
        <source>Catches file…</source>
        <translation>Archivo de captación…</translation>
    </message>
    <message>
        <source>Catch &amp;test</source>
        <translation>Prueba de &amp;captación</translation>
    </message>
    <message>
        <source>Heads against the catch test</source>
        <translation>Aspersores frente a la prueba de captación</translation>
    </message>
    <message>
        <source>Cans: predicted against caught</source>
        <translation>Recipientes: previsto frente a captado</translation>
    </message>
    <message>
        <source>Heads</source>
        <translation>Aspersores</translation>
    </message>
    <message>
        <source>Cans</source>
        <translation>Recipientes</translation>
    </message>
    <message>
        <source>Evidence about the chosen head</source>
        <translation>Pruebas sobre el aspersor elegido</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>ninguna elegida</translation>
    </message>
    <message>
        <source>Catches</source>
        <translation>Captación</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt)</source>
        <translation>Tablas (*.csv *.tsv *.txt)</translation>
    </message>
    <message>
        <source>Which test?</source>
        <translation>¿Qué prueba?</translation>
    </message>
    <message>
        <source>of the file %1</source>
        <translation>del archivo %1</translation>
    </message>
    <message>
        <source>Choose a catch test made on this ground, with cans in the frame of the plan.</source>
        <translation>Elija una prueba de captación hecha en este terreno, con los recipientes en las coordenadas del plano.</translation>
    </message>
    <message>
        <source>Holding the plan against the catch test</source>
        <translation>Comparando el plano con la prueba</translation>
    </message>
    <message>
        <source>Other work is going on; choose again when it has ended.</source>
        <translation>Hay otro trabajo en marcha; vuelva a elegir cuando termine.</translation>
    </message>
    <message>
        <source>Comparing…</source>
        <translation>Comparando…</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Detenido.</translation>
    </message>
    <message>
        <source>Choose a head to see the evidence. It says where to look first; only a look at the head tells what is wrong.</source>
        <translation>Elija un aspersor para ver las pruebas. Dicen dónde mirar primero; solo mirando el aspersor se sabe qué le pasa.</translation>
    </message>
    <message>
        <source>Head %1, %2: %3</source>
        <translation>Aspersor %1, %2: %3</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::BackgroundQuestion</name>
    <message>
        <source>Other work is going on; choose again when it has ended.</source>
        <translation>Hay otro trabajo en marcha; vuelva a elegir cuando termine.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Detenido.</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::CanGrid</name>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Catch cans as they stand on the ground</source>
        <translation>Recipientes tal como están en el terreno</translation>
    </message>
    <message>
        <source>tipped over</source>
        <translation>volcado</translation>
    </message>
    <message>
        <source>hit by a wheel</source>
        <translation>golpeado por una rueda</translation>
    </message>
    <message>
        <source>sprinkler struck the can</source>
        <translation>el chorro golpeó el recipiente</translation>
    </message>
    <message>
        <source>leaves or soil in the can</source>
        <translation>hojas o tierra en el recipiente</translation>
    </message>
    <message>
        <source>Leave out a can</source>
        <translation>Excluir un recipiente</translation>
    </message>
    <message>
        <source>Why does this can not count? The reason is printed in the report. Empty: it counts.</source>
        <translation>¿Por qué no cuenta este recipiente? El motivo se imprime en el informe. Vacío: cuenta.</translation>
    </message>
    <message>
        <source>Leave out or count again…</source>
        <translation>Excluir o volver a contar…</translation>
    </message>
    <message>
        <source>Empty</source>
        <translation>Vaciar</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::CasePanel</name>
    <message>
        <source>Take this filing o&amp;ut</source>
        <translation>Sacar este e&amp;xpediente</translation>
    </message>
    <message>
        <source>&amp;Show the evidence</source>
        <translation>Mostrar las pr&amp;uebas</translation>
    </message>
    <message>
        <source>The raw data beside the chosen row (Ctrl+I)</source>
        <translation>Los datos originales junto a la fila elegida (Ctrl+I)</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Cifras</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Reglas</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Preguntas</translation>
    </message>
    <message>
        <source>Payment</source>
        <translation>Pago</translation>
    </message>
    <message>
        <source>Letter to the applicant</source>
        <translation>Carta al solicitante</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Filings</source>
        <translation>Expedientes</translation>
    </message>
    <message>
        <source>Filing %1</source>
        <translation>Expediente %1</translation>
    </message>
    <message>
        <source>%1, %2, site %3</source>
        <translation>%1, %2, sitio %3</translation>
    </message>
    <message>
        <source>Program %1</source>
        <translation>Programa %1</translation>
    </message>
    <message>
        <source>no application</source>
        <translation>sin solicitud</translation>
    </message>
    <message>
        <source>status: %1</source>
        <translation>estado: %1</translation>
    </message>
    <message>
        <source>by the rules: %1</source>
        <translation>según las reglas: %1</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>firmado</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>sin firma</translation>
    </message>
    <message>
        <source>filing %1…</source>
        <translation>expediente %1…</translation>
    </message>
    <message>
        <source>it carries the number %1</source>
        <translation>lleva el número %1</translation>
    </message>
    <message>
        <source>No application is chosen</source>
        <translation>No hay ninguna solicitud elegida</translation>
    </message>
    <message>
        <source>Questions (%1)</source>
        <translation>Preguntas (%1)</translation>
    </message>
    <message>
        <source>Choose a row to see where its evidence stands.</source>
        <translation>Elija una fila para ver dónde están sus pruebas.</translation>
    </message>
    <message>
        <source>Evidence: %1</source>
        <translation>Pruebas: %1</translation>
    </message>
    <message>
        <source>The filing was not taken out</source>
        <translation>El expediente no se sacó</translation>
    </message>
    <message>
        <source>Filing %1 belongs to no application now.</source>
        <translation>El expediente %1 ya no pertenece a ninguna solicitud.</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::ChartPanel</name>
    <message>
        <source>Copy picture and table</source>
        <translation>Copiar imagen y tabla</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::ConflictsModel</name>
    <message>
        <source>not chosen</source>
        <translation>sin elegir</translation>
    </message>
    <message>
        <source>the book&apos;s</source>
        <translation>el del libro</translation>
    </message>
    <message>
        <source>the file&apos;s</source>
        <translation>el del archivo</translation>
    </message>
    <message>
        <source>%1, row %2</source>
        <translation>%1, fila %2</translation>
    </message>
    <message>
        <source>Another row has another value for this record; one of them can stand.</source>
        <translation>Otra fila tiene otro valor para este registro; solo uno de ellos puede quedar.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>In the book</source>
        <translation>En el libro</translation>
    </message>
    <message>
        <source>In the file</source>
        <translation>En el archivo</translation>
    </message>
    <message>
        <source>What stands</source>
        <translation>Qué queda</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::ConflictsPanel</name>
    <message>
        <source>Where the book and the files differ</source>
        <translation>Dónde difieren el libro y los archivos</translation>
    </message>
    <message>
        <source>1 lets the book&apos;s value stand, 2 the file&apos;s, 0 neither yet; the space bar goes through the three. Press Return to see the place in the file</source>
        <translation>1 deja el valor del libro, 2 el del archivo, 0 ninguno todavía; la barra espaciadora recorre los tres. Pulse Intro para ver el lugar en el archivo</translation>
    </message>
    <message>
        <source>As in the book</source>
        <translation>Como en el libro</translation>
    </message>
    <message>
        <source>For the selected rows; key 1</source>
        <translation>Para las filas seleccionadas; tecla 1</translation>
    </message>
    <message>
        <source>As in the file</source>
        <translation>Como en el archivo</translation>
    </message>
    <message>
        <source>For the selected rows; key 2</source>
        <translation>Para las filas seleccionadas; tecla 2</translation>
    </message>
    <message>
        <source>Not chosen</source>
        <translation>Sin elegir</translation>
    </message>
    <message>
        <source>For the selected rows; key 0</source>
        <translation>Para las filas seleccionadas; tecla 0</translation>
    </message>
    <message>
        <source>All as in the book</source>
        <translation>Todo como en el libro</translation>
    </message>
    <message>
        <source>For every row</source>
        <translation>Para todas las filas</translation>
    </message>
    <message>
        <source>All as in the file</source>
        <translation>Todo como en el archivo</translation>
    </message>
    <message>
        <source>%1 as in the book, %2 as in the file, %3 not chosen</source>
        <translation>%1 como en el libro, %2 como en el archivo, %3 sin elegir</translation>
    </message>
    <message>
        <source>Rows left as they were: %1. The files have several values for one record there, and one of them can stand. Choose it yourself.</source>
        <translation>Filas que quedaron como estaban: %1. Los archivos tienen ahí varios valores para un mismo registro, y solo uno puede quedar. Elíjalo usted.</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::DecisionBox</name>
    <message>
        <source>Decide</source>
        <translation>Decidir</translation>
    </message>
    <message>
        <source>&amp;Approve</source>
        <translation>&amp;Aprobar</translation>
    </message>
    <message>
        <source>&amp;Decline</source>
        <translation>&amp;Denegar</translation>
    </message>
    <message>
        <source>As&amp;k for more</source>
        <translation>Pedir má&amp;s</translation>
    </message>
    <message>
        <source>&amp;Open again</source>
        <translation>Abrir de &amp;nuevo</translation>
    </message>
    <message>
        <source>&amp;Reasons by the rules</source>
        <translation>&amp;Motivos según las reglas</translation>
    </message>
    <message>
        <source>Puts the reasons that the rules give into the field, to go on from</source>
        <translation>Pone en el campo los motivos que dan las reglas, para seguir a partir de ellos</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Reason, for the applicant and the journal</source>
        <translation>Motivo, para el solicitante y el diario</translation>
    </message>
    <message>
        <source>&amp;Write the decision</source>
        <translation>Escribir la de&amp;cisión</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>Who decides</source>
        <translation>Quién decide</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Write the reason first.</source>
        <translation>Escriba primero el motivo.</translation>
    </message>
    <message>
        <source>Write who decides.</source>
        <translation>Escriba quién decide.</translation>
    </message>
    <message>
        <source>The decision on %1 is in the book.</source>
        <translation>La decisión sobre %1 está en el libro.</translation>
    </message>
    <message>
        <source>&amp;Take up</source>
        <translation>&amp;Tomar en revisión</translation>
    </message>
    <message>
        <source>Back to re&amp;ceived</source>
        <translation>De vuelta a &amp;recibida</translation>
    </message>
    <message>
        <source>Pa&amp;id</source>
        <translation>Pa&amp;gada</translation>
    </message>
    <message>
        <source>Under review from now on</source>
        <translation>En revisión desde ahora</translation>
    </message>
    <message>
        <source>What was missing has come</source>
        <translation>Llegó lo que faltaba</translation>
    </message>
    <message>
        <source>The amount was paid out</source>
        <translation>El importe se pagó</translation>
    </message>
    <message>
        <source>Nothing may follow from here.</source>
        <translation>Desde aquí no puede seguir nada.</translation>
    </message>
    <message>
        <source>Amount approved or paid</source>
        <translation>Importe aprobado o pagado</translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translation>Ctrl+Intro</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::DepthMap</name>
    <message>
        <source>Map of the depths caught</source>
        <translation>Mapa de las láminas captadas</translation>
    </message>
    <message>
        <source>depth caught; a bar marks the driest quarter, hatching a can left out</source>
        <translation>lámina captada; una barra marca el cuarto más seco, el rayado un recipiente excluido</translation>
    </message>
    <message>
        <source>depth caught; hatching marks a can left out</source>
        <translation>lámina captada; el rayado marca un recipiente excluido</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::EvidencePanel</name>
    <message>
        <source>What the evidence is about</source>
        <translation>De qué tratan las pruebas</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Pruebas</translation>
    </message>
    <message>
        <source>Where it stands: %1</source>
        <translation>Dónde está: %1</translation>
    </message>
    <message>
        <source>Choose a claim, a rule or a question to see the raw data that it speaks of.</source>
        <translation>Elija una cifra, una regla o una pregunta para ver los datos originales de los que habla.</translation>
    </message>
    <message>
        <source>It points at nothing in the filing.</source>
        <translation>No señala nada en el expediente.</translation>
    </message>
    <message>
        <source>The filing holds no raw data there.</source>
        <translation>El expediente no tiene datos originales ahí.</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::FieldSheet</name>
    <message numerus="yes">
        <source>(and %n more)</source>
        <translation>
            <numerusform>(y %n más)</numerusform>
            <numerusform>(y %n más)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::FieldSheetPage</name>
    <message>
        <source>Open or make a book first; until then the entries are kept safe beside your own data.</source>
        <translation>Abra o cree primero un libro; hasta entonces las anotaciones se guardan junto a sus datos.</translation>
    </message>
    <message>
        <source>New test</source>
        <translation>Prueba nueva</translation>
    </message>
    <message>
        <source>The entries of this sheet are not in the book. Give them up and begin a new sheet?</source>
        <translation>Las anotaciones de esta hoja no están en el libro. ¿Descartarlas y empezar una hoja nueva?</translation>
    </message>
    <message>
        <source>No book is open.</source>
        <translation>No hay ningún libro abierto.</translation>
    </message>
    <message>
        <source>There is no catch test in this book yet.</source>
        <translation>Todavía no hay ninguna prueba de captación en este libro.</translation>
    </message>
    <message>
        <source>Open a test</source>
        <translation>Abrir una prueba</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Prueba</translation>
    </message>
    <message>
        <source>Save to the book</source>
        <translation>Guardar en el libro</translation>
    </message>
    <message>
        <source>Give the test a short name of its own and choose its area first.</source>
        <translation>Dé primero a la prueba un nombre corto propio y elija su zona.</translation>
    </message>
    <message>
        <source>The test was not saved</source>
        <translation>La prueba no se guardó</translation>
    </message>
    <message>
        <source>Test %1 is in the book.</source>
        <translation>La prueba %1 está en el libro.</translation>
    </message>
    <message>
        <source>Field sheet</source>
        <translation>Hoja de campo</translation>
    </message>
    <message>
        <source>Type each catch and press Enter: the next can of your walk is waiting. Arrows move over the ground.</source>
        <translation>Escriba cada lectura y pulse Intro: el siguiente recipiente del recorrido espera. Las flechas se mueven por el terreno.</translation>
    </message>
    <message>
        <source>Open a test…</source>
        <translation>Abrir una prueba…</translation>
    </message>
    <message>
        <source>Cans</source>
        <translation>Recipientes</translation>
    </message>
    <message>
        <source>Pressures</source>
        <translation>Presiones</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Notes and photos</source>
        <translation>Notas y fotos</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>grid</source>
        <translation>cuadrícula</translation>
    </message>
    <message>
        <source>pivot, along a radius</source>
        <translation>pivote, a lo largo de un radio</translation>
    </message>
    <message>
        <source>lateral, along the machine</source>
        <translation>lateral, a lo largo de la máquina</translation>
    </message>
    <message>
        <source>hose reel or traveller</source>
        <translation>enrollador o cañón viajero</translation>
    </message>
    <message>
        <source>irregular</source>
        <translation>irregular</translation>
    </message>
    <message>
        <source>millilitres</source>
        <translation>mililitros</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>milímetros</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>Unit of the catches</source>
        <translation>Unidad de las lecturas</translation>
    </message>
    <message>
        <source>Low quarter</source>
        <translation>Cuarto inferior</translation>
    </message>
    <message>
        <source>T-NORTH-25</source>
        <translation>T-NORTE-25</translation>
    </message>
    <message>
        <source>&amp;Test</source>
        <translation>&amp;Prueba</translation>
    </message>
    <message>
        <source>&amp;Area</source>
        <translation>Z&amp;ona</translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation>&amp;Fecha</translation>
    </message>
    <message>
        <source>&amp;Layout</source>
        <translation>&amp;Disposición</translation>
    </message>
    <message>
        <source>&amp;Catches in</source>
        <translation>&amp;Lecturas en</translation>
    </message>
    <message>
        <source>T&amp;hroat area</source>
        <translation>Área de la &amp;boca</translation>
    </message>
    <message>
        <source>Throat area</source>
        <translation>Área de la boca</translation>
    </message>
    <message>
        <source>16.61 in2</source>
        <translation>16.61 in2</translation>
    </message>
    <message>
        <source>Run time, &amp;minutes</source>
        <translation>Tiempo de riego, &amp;min</translation>
    </message>
    <message>
        <source>Run time</source>
        <translation>Tiempo de riego</translation>
    </message>
    <message>
        <source>&amp;Wind</source>
        <translation>&amp;Viento</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Viento</translation>
    </message>
    <message>
        <source>3 mph</source>
        <translation>3 mph</translation>
    </message>
    <message>
        <source>back and forth</source>
        <translation>ida y vuelta</translation>
    </message>
    <message>
        <source>row by row</source>
        <translation>fila por fila</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>&amp;Rows</source>
        <translation>Fil&amp;as</translation>
    </message>
    <message>
        <source>C&amp;olumns</source>
        <translation>&amp;Columnas</translation>
    </message>
    <message>
        <source>Can &amp;spacing</source>
        <translation>&amp;Separación</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>&amp;Unidad</translation>
    </message>
    <message>
        <source>Wal&amp;k</source>
        <translation>&amp;Recorrido</translation>
    </message>
    <message>
        <source>Lane spacing</source>
        <translation>Separación de pasadas</translation>
    </message>
    <message>
        <source>220 ft</source>
        <translation>220 ft</translation>
    </message>
    <message>
        <source>La&amp;ne spacing</source>
        <translation>Separación de &amp;pasadas</translation>
    </message>
    <message>
        <source>Low &amp;quarter</source>
        <translation>C&amp;uarto inferior</translation>
    </message>
    <message>
        <source>Where the water fell</source>
        <translation>Dónde cayó el agua</translation>
    </message>
    <message>
        <source>found &quot;%1&quot;, expected a number of minutes</source>
        <translation>se encontró «%1», se esperaba un número de minutos</translation>
    </message>
    <message>
        <source>%1 of %2 cans read</source>
        <translation>%1 de %2 recipientes leídos</translation>
    </message>
    <message>
        <source>Layout</source>
        <translation>Disposición</translation>
    </message>
    <message>
        <source>Rows, columns and spacing</source>
        <translation>Filas, columnas y separación</translation>
    </message>
    <message>
        <source>%1, area %2, %3</source>
        <translation>%1, zona %2, %3</translation>
    </message>
    <message>
        <source>The book has another sheet with the name %1, and a field sheet is not overwritten. Give this one a name of its own.</source>
        <translation>El libro tiene otra hoja con el nombre %1, y una hoja de campo no se sobrescribe. Dé a esta un nombre propio.</translation>
    </message>
    <message>
        <source>Catches in %1</source>
        <translation>Lecturas en %1</translation>
    </message>
    <message>
        <source>Catch test %1, area %2, %3</source>
        <translation>Prueba de captación %1, zona %2, %3</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::FigureCard</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Press Space to see how this figure came about</source>
        <translation>Pulse Espacio para ver cómo se obtuvo esta cifra</translation>
    </message>
    <message>
        <source>Formula</source>
        <translation>Fórmula</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Dato</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Convention</source>
        <translation>Convención</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>* Rests on an assumed or estimated input.</source>
        <translation>* Se apoya en un dato supuesto o estimado.</translation>
    </message>
    <message>
        <source>How %1 came about</source>
        <translation>Cómo se obtuvo %1</translation>
    </message>
    <message>
        <source>Inputs</source>
        <translation>Datos</translation>
    </message>
    <message>
        <source>Rests on an assumed or estimated input.</source>
        <translation>Se apoya en un dato supuesto o estimado.</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Copiar</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::FigureTable</name>
    <message>
        <source>Press Return on a figure to see how it came about</source>
        <translation>Pulse Intro en una cifra para ver cómo se obtuvo</translation>
    </message>
    <message>
        <source>Double click or Return: how this figure came about</source>
        <translation>Doble clic o Intro: cómo se obtuvo esta cifra</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::FilingBox</name>
    <message>
        <source>This filing belongs to no application</source>
        <translation>Este expediente no pertenece a ninguna solicitud</translation>
    </message>
    <message>
        <source>Put it into an application of its site, or open a new one for it. Nothing is decided on before.</source>
        <translation>Póngalo en una solicitud de su sitio o abra una nueva para él. Antes no se decide nada.</translation>
    </message>
    <message>
        <source>P&amp;ut it there</source>
        <translation>Po&amp;nerlo ahí</translation>
    </message>
    <message>
        <source>New app&amp;lication…</source>
        <translation>Nueva solici&amp;tud…</translation>
    </message>
    <message>
        <source>&amp;Application of its site</source>
        <translation>&amp;Solicitud de su sitio</translation>
    </message>
    <message>
        <source>&amp;Who</source>
        <translation>&amp;Quién</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>ninguna aún</translation>
    </message>
    <message>
        <source>There is no application of site %1.</source>
        <translation>No hay ninguna solicitud del sitio %1.</translation>
    </message>
    <message>
        <source>The filing belongs to application %1 now.</source>
        <translation>El expediente pertenece ahora a la solicitud %1.</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::ImportOutcome</name>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Columna</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Outcome of the import</source>
        <translation>Resultado de la importación</translation>
    </message>
    <message>
        <source>Press Return to see the place in the file</source>
        <translation>Pulse Intro para ver el lugar en el archivo</translation>
    </message>
    <message>
        <source>Write the refused rows to a file…</source>
        <translation>Escribir las filas rechazadas en un archivo…</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tablas (*.csv)</translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation>El archivo no se escribió</translation>
    </message>
    <message>
        <source>stored</source>
        <translation>guardado</translation>
    </message>
    <message>
        <source>tried, not stored</source>
        <translation>probado, no guardado</translation>
    </message>
    <message>
        <source>not stored</source>
        <translation>no guardado</translation>
    </message>
    <message>
        <source>and %1 more refused rows; the file of refused rows has all of them</source>
        <translation>y %1 filas rechazadas más; el archivo de filas rechazadas las tiene todas</translation>
    </message>
    <message>
        <source>%1: the book has %2, the file %3</source>
        <translation>%1: el libro tiene %2, el archivo %3</translation>
    </message>
    <message>
        <source>and %1 more with another value</source>
        <translation>y %1 más con otro valor</translation>
    </message>
    <message>
        <source>%1 cannot be replaced</source>
        <translation>%1 no se puede reemplazar</translation>
    </message>
    <message>
        <source>%1: the book has %2, the file %3; the book&apos;s stands</source>
        <translation>%1: el libro tiene %2, el archivo %3; queda el del libro</translation>
    </message>
    <message>
        <source>%1: the book has %2, the file %3; the file&apos;s stands</source>
        <translation>%1: el libro tiene %2, el archivo %3; queda el del archivo</translation>
    </message>
    <message>
        <source>%1: %2 rows read, %3 new, %4 there already, %5 decided before, %6 with another value, %7 refused</source>
        <translation>%1: %2 filas leídas, %3 nuevas, %4 ya estaban, %5 decididas antes, %6 con otro valor, %7 rechazadas</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::ImportPage</name>
    <message>
        <source>Import</source>
        <translation>Importar</translation>
    </message>
    <message>
        <source>Tables as you have them. Nothing goes into the book before you have seen what would happen.</source>
        <translation>Las tablas tal como las tiene. Nada entra en el libro antes de que vea qué pasaría.</translation>
    </message>
    <message>
        <source>Choose files…</source>
        <translation>Elegir archivos…</translation>
    </message>
    <message>
        <source>Try without storing</source>
        <translation>Probar sin guardar</translation>
    </message>
    <message>
        <source>Files</source>
        <translation>Archivos</translation>
    </message>
    <message>
        <source>Take off the list</source>
        <translation>Quitar de la lista</translation>
    </message>
    <message>
        <source>not told yet</source>
        <translation>aún sin indicar</translation>
    </message>
    <message>
        <source>2024-06-30</source>
        <translation>2024-06-30</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>día, mes, año</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>mes, día, año</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>año, mes, día</translation>
    </message>
    <message>
        <source>12.5 (point)</source>
        <translation>12.5 (punto)</translation>
    </message>
    <message>
        <source>12,5 (comma)</source>
        <translation>12,5 (coma)</translation>
    </message>
    <message>
        <source>&amp;Kind of table</source>
        <translation>&amp;Tipo de tabla</translation>
    </message>
    <message>
        <source>&amp;Dates</source>
        <translation>&amp;Fechas</translation>
    </message>
    <message>
        <source>Deci&amp;mals</source>
        <translation>Deci&amp;males</translation>
    </message>
    <message>
        <source>Press the head of a column (or Return in it) to say what it holds.</source>
        <translation>Pulse el encabezado de una columna (o Intro en ella) para decir qué contiene.</translation>
    </message>
    <message>
        <source>First rows of the file</source>
        <translation>Primeras filas del archivo</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Qué pasó</translation>
    </message>
    <message>
        <source>Store good rows though others are refused</source>
        <translation>Guardar las filas buenas aunque otras se rechacen</translation>
    </message>
    <message>
        <source>other values: list them, store nothing</source>
        <translation>otros valores: listarlos, no guardar nada</translation>
    </message>
    <message>
        <source>other values: keep the book&apos;s</source>
        <translation>otros valores: mantener los del libro</translation>
    </message>
    <message>
        <source>other values: take the file&apos;s</source>
        <translation>otros valores: tomar los del archivo</translation>
    </message>
    <message>
        <source>Where the book has another value</source>
        <translation>Donde el libro tiene otro valor</translation>
    </message>
    <message>
        <source>Choose files</source>
        <translation>Elegir archivos</translation>
    </message>
    <message>
        <source>%1
not used</source>
        <translation>%1
no se usa</translation>
    </message>
    <message>
        <source>%1
= %2</source>
        <translation>%1
= %2</translation>
    </message>
    <message>
        <source>Choose files or drop them here.</source>
        <translation>Elija archivos o suéltelos aquí.</translation>
    </message>
    <message>
        <source>This file is ready.</source>
        <translation>Este archivo está listo.</translation>
    </message>
    <message>
        <source>Open or make a book first.</source>
        <translation>Abra o cree primero un libro.</translation>
    </message>
    <message>
        <source>What column %1 holds</source>
        <translation>Qué contiene la columna %1</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>no se usa</translation>
    </message>
    <message>
        <source>Trying the import</source>
        <translation>Probando la importación</translation>
    </message>
    <message>
        <source>Importing</source>
        <translation>Importando</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, en %2</translation>
    </message>
    <message>
        <source>This did not work</source>
        <translation>Esto no funcionó</translation>
    </message>
    <message>
        <source>Load a map…</source>
        <translation>Cargar un mapa…</translation>
    </message>
    <message>
        <source>Maps of columns (*.json)</source>
        <translation>Mapas de columnas (*.json)</translation>
    </message>
    <message>
        <source>Save as a map…</source>
        <translation>Guardar como mapa…</translation>
    </message>
    <message>
        <source>In every row: %1 = %2</source>
        <translation>En cada fila: %1 = %2</translation>
    </message>
    <message>
        <source>the register of one meter…</source>
        <translation>el registro de un medidor…</translation>
    </message>
    <message>
        <source>the volumes of one meter…</source>
        <translation>los volúmenes de un medidor…</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Medidor</translation>
    </message>
    <message>
        <source>The meter whose readings stand in column %1</source>
        <translation>El medidor cuyas lecturas están en la columna %1</translation>
    </message>
    <message>
        <source>Volumes</source>
        <translation>Volúmenes</translation>
    </message>
    <message>
        <source>Minutes that each volume covers, up to the time of its row</source>
        <translation>Minutos que abarca cada volumen, hasta la hora de su fila</translation>
    </message>
    <message>
        <source>Same in every row…</source>
        <translation>Igual en cada fila…</translation>
    </message>
    <message>
        <source>What is the same in every row?</source>
        <translation>¿Qué es igual en cada fila?</translation>
    </message>
    <message>
        <source>%1 in every row (empty: no such thing)</source>
        <translation>%1 en cada fila (vacío: nada)</translation>
    </message>
    <message>
        <source>The map is in %1.</source>
        <translation>El mapa está en %1.</translation>
    </message>
    <message>
        <source>For what the file does not say, such as the meter of its readings</source>
        <translation>Para lo que el archivo no dice, como el medidor de sus lecturas</translation>
    </message>
    <message>
        <source>as the header shows</source>
        <translation>según el encabezado</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>punto y coma</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulador</translation>
    </message>
    <message>
        <source>bar |</source>
        <translation>barra |</translation>
    </message>
    <message>
        <source>-6999; n/a</source>
        <translation>-6999; n/d</translation>
    </message>
    <message>
        <source>Texts that stand for no value, parted by semicolons; an empty cell does anyway</source>
        <translation>Textos que significan sin valor, separados por punto y coma; una celda vacía siempre lo significa</translation>
    </message>
    <message>
        <source>Columns &amp;parted by</source>
        <translation>Columnas se&amp;paradas por</translation>
    </message>
    <message>
        <source>&amp;Not recorded</source>
        <translation>Si&amp;n registrar</translation>
    </message>
    <message>
        <source>Tables and maps (*.csv *.tsv *.txt *.xlsx *.ods *.geojson *.shp *.kml *.gpkg);;All files (*)</source>
        <translation>Tablas y mapas (*.csv *.tsv *.txt *.xlsx *.ods *.geojson *.shp *.kml *.gpkg);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>medidor %1</translation>
    </message>
    <message>
        <source>For those that nobody chose one by one</source>
        <translation>Para los que nadie eligió uno por uno</translation>
    </message>
    <message>
        <source>Where they differ</source>
        <translation>Dónde difieren</translation>
    </message>
    <message>
        <source>Where they differ (%1)</source>
        <translation>Dónde difieren (%1)</translation>
    </message>
    <message>
        <source>What happened, and where the book and the files differ</source>
        <translation>Qué pasó, y dónde difieren el libro y los archivos</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::KeepDialog</name>
    <message>
        <source>Keep the plan in the book</source>
        <translation>Guardar el plano en el libro</translation>
    </message>
    <message>
        <source>a short name of its own, such as P-NORTH</source>
        <translation>un nombre corto propio, como P-NORTE</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Code</source>
        <translation>&amp;Código</translation>
    </message>
    <message>
        <source>&amp;Site</source>
        <translation>&amp;Sitio</translation>
    </message>
    <message>
        <source>&amp;Who keeps it</source>
        <translation>&amp;Quién lo guarda</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Guardarlo</translation>
    </message>
    <message>
        <source>A new plan of the book.</source>
        <translation>Un plano nuevo del libro.</translation>
    </message>
    <message>
        <source>Revision %1 of the plan %2; the earlier ones stay.</source>
        <translation>Revisión %1 del plano %2; las anteriores quedan.</translation>
    </message>
    <message>
        <source>Give the plan a code first.</source>
        <translation>Primero dé un código al plano.</translation>
    </message>
    <message>
        <source>There is no site in the book; import one first.</source>
        <translation>No hay ningún sitio en el libro; importe uno primero.</translation>
    </message>
    <message>
        <source>Write who keeps it.</source>
        <translation>Escriba quién lo guarda.</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::MainWindow</name>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Sites</source>
        <translation>Sitios</translation>
    </message>
    <message>
        <source>Field sheet</source>
        <translation>Hoja de campo</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plano</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Páginas</translation>
    </message>
    <message>
        <source>US</source>
        <translation>EE. UU.</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation>Métrico</translation>
    </message>
    <message>
        <source>Show US customary units</source>
        <translation>Mostrar unidades de EE. UU.</translation>
    </message>
    <message>
        <source>Show metric units</source>
        <translation>Mostrar unidades métricas</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Dark colours</source>
        <translation>Colores oscuros</translation>
    </message>
    <message>
        <source>This did not work</source>
        <translation>Esto no funcionó</translation>
    </message>
    <message>
        <source>no book open</source>
        <translation>ningún libro abierto</translation>
    </message>
    <message>
        <source>Entries of the field sheet that were not saved when the program last ended are back. Save them to the book or start a new test.</source>
        <translation>Se recuperaron anotaciones de la hoja de campo que no se habían guardado al terminar el programa. Guárdelas en el libro o empiece una prueba nueva.</translation>
    </message>
    <message>
        <source>%1 was stopped; nothing was changed.</source>
        <translation>%1: se detuvo; nada cambió.</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Libro</translation>
    </message>
    <message>
        <source>&amp;New book…</source>
        <translation>Libro &amp;nuevo…</translation>
    </message>
    <message>
        <source>&amp;Open a book…</source>
        <translation>&amp;Abrir un libro…</translation>
    </message>
    <message>
        <source>&amp;Recent books</source>
        <translation>Libros &amp;recientes</translation>
    </message>
    <message>
        <source>&amp;Demo book…</source>
        <translation>Libro de &amp;demostración…</translation>
    </message>
    <message>
        <source>&amp;Close the book</source>
        <translation>&amp;Cerrar el libro</translation>
    </message>
    <message>
        <source>&amp;Print preview…</source>
        <translation>&amp;Vista previa de impresión…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>&amp;Copy what is chosen</source>
        <translation>&amp;Copiar lo elegido</translation>
    </message>
    <message>
        <source>&amp;Go to</source>
        <translation>&amp;Ir a</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;US customary or metric</source>
        <translation>Unidades de EE. &amp;UU. o métricas</translation>
    </message>
    <message>
        <source>&amp;Light or dark</source>
        <translation>&amp;Claro u oscuro</translation>
    </message>
    <message>
        <source>The &amp;whole screen</source>
        <translation>&amp;Pantalla completa</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;About Evenfall</source>
        <translation>&amp;Acerca de Evenfall</translation>
    </message>
    <message>
        <source>About Evenfall</source>
        <translation>Acerca de Evenfall</translation>
    </message>
    <message>
        <source>Evenfall %1
Record book and calculator for the water on large turf.

Figures support judgement. They replace neither local codes, watering restrictions and permits nor licensed practice: mind backflow, reclaimed water, pressure, electricity, buried lines, machines and spray on roads.

Free software under the GNU General Public License, version 3 or later.</source>
        <translation>Evenfall %1
Libro de registro y calculadora del agua de céspedes grandes.

Las cifras apoyan el juicio. No sustituyen los códigos locales, las restricciones de riego, los permisos ni la práctica con licencia: cuidado con el reflujo, el agua reciclada, la presión, la electricidad, las líneas enterradas, las máquinas y el agua sobre caminos.

Software libre bajo la Licencia Pública General de GNU, versión 3 o posterior.</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>aún ninguna</translation>
    </message>
    <message>
        <source>Open a book</source>
        <translation>Abrir un libro</translation>
    </message>
    <message>
        <source>Evenfall books (*.evenfall);;All files (*)</source>
        <translation>Libros de Evenfall (*.evenfall);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>New book</source>
        <translation>Libro nuevo</translation>
    </message>
    <message>
        <source>Evenfall books (*.evenfall)</source>
        <translation>Libros de Evenfall (*.evenfall)</translation>
    </message>
    <message>
        <source>Where shall the demo book lie?</source>
        <translation>¿Dónde debe quedar el libro de demostración?</translation>
    </message>
    <message>
        <source>Making the demo book</source>
        <translation>Creando el libro de demostración</translation>
    </message>
    <message>
        <source>This page has nothing to print; reports are on the Reports page.</source>
        <translation>Esta página no tiene nada que imprimir; los informes están en la página Informes.</translation>
    </message>
    <message>
        <source>Copied.</source>
        <translation>Copiado.</translation>
    </message>
    <message>
        <source>Nothing is chosen that could be copied.</source>
        <translation>No hay nada elegido que se pueda copiar.</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importar</translation>
    </message>
    <message>
        <source>Reports</source>
        <translation>Informes</translation>
    </message>
    <message>
        <source>Schedule</source>
        <translation>Programa de riego</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Actio&amp;ns</source>
        <translation>Acci&amp;ones</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::PlanDocument</name>
    <message>
        <source>Add a head</source>
        <translation>Añadir un aspersor</translation>
    </message>
    <message>
        <source>Remove a head</source>
        <translation>Quitar un aspersor</translation>
    </message>
    <message>
        <source>Rename the plan</source>
        <translation>Cambiar el nombre del plano</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::PlanPage</name>
    <message>
        <source>Plan</source>
        <translation>Plano</translation>
    </message>
    <message>
        <source>What a design should do when all heads run: move a head and see. A prediction knows neither wear nor leaks; a catch test does.</source>
        <translation>Lo que un diseño debería hacer con todos los aspersores en marcha: mueva uno y mire. Una predicción no conoce desgaste ni fugas; una prueba de captación sí.</translation>
    </message>
    <message>
        <source>Open a plan…</source>
        <translation>Abrir un plano…</translation>
    </message>
    <message>
        <source>Open a plan</source>
        <translation>Abrir un plano</translation>
    </message>
    <message>
        <source>Plans (*.json)</source>
        <translation>Planos (*.json)</translation>
    </message>
    <message>
        <source>Predicted rate</source>
        <translation>Tasa prevista</translation>
    </message>
    <message>
        <source>Mark turf that gets less than half the mean</source>
        <translation>Marcar el césped que recibe menos de la mitad de la media</translation>
    </message>
    <message>
        <source>+ − zoom, 0 fits, N and P choose a head, arrows move it</source>
        <translation>+ − amplían, 0 ajusta, N y P eligen un aspersor, las flechas lo mueven</translation>
    </message>
    <message>
        <source>East</source>
        <translation>Este</translation>
    </message>
    <message>
        <source>North</source>
        <translation>Norte</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation>Radio</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Caudal</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Estación</translation>
    </message>
    <message>
        <source>The plan cannot be read</source>
        <translation>El plano no se puede leer</translation>
    </message>
    <message>
        <source>Save the plan</source>
        <translation>Guardar el plano</translation>
    </message>
    <message>
        <source>The plan was not saved</source>
        <translation>El plano no se guardó</translation>
    </message>
    <message>
        <source>The plan was saved.</source>
        <translation>El plano se guardó.</translation>
    </message>
    <message>
        <source>No head is chosen</source>
        <translation>No hay ningún aspersor elegido</translation>
    </message>
    <message>
        <source>Head %1, in %2 and %3</source>
        <translation>Aspersor %1, en %2 y %3</translation>
    </message>
    <message>
        <source>Change head %1</source>
        <translation>Cambiar el aspersor %1</translation>
    </message>
    <message>
        <source>%1 heads on %2, from the plan</source>
        <translation>%1 aspersores en %2, del plano</translation>
    </message>
    <message>
        <source>mean of the lowest quarter of the turf ÷ mean</source>
        <translation>media del cuarto más seco del césped ÷ media</translation>
    </message>
    <message>
        <source>1 − mean distance from the mean ÷ mean</source>
        <translation>1 − desviación media respecto a la media ÷ media</translation>
    </message>
    <message>
        <source>Mean rate</source>
        <translation>Tasa media</translation>
    </message>
    <message>
        <source>water on the turf ÷ turf</source>
        <translation>agua sobre el césped ÷ césped</translation>
    </message>
    <message>
        <source>lowest: %1</source>
        <translation>la más baja: %1</translation>
    </message>
    <message>
        <source>highest: %1</source>
        <translation>la más alta: %1</translation>
    </message>
    <message>
        <source>Off target</source>
        <translation>Fuera del blanco</translation>
    </message>
    <message>
        <source>water outside the turf or on paving ÷ all water</source>
        <translation>agua fuera del césped o sobre pavimento ÷ toda el agua</translation>
    </message>
    <message>
        <source>Turf no head reaches</source>
        <translation>Césped sin alcance</translation>
    </message>
    <message>
        <source>turf reached by no head ÷ turf</source>
        <translation>césped que ningún aspersor alcanza ÷ césped</translation>
    </message>
    <message>
        <source>by one: %1</source>
        <translation>por uno: %1</translation>
    </message>
    <message>
        <source>by two or more: %1</source>
        <translation>por dos o más: %1</translation>
    </message>
    <message>
        <source>by three or more: %1</source>
        <translation>por tres o más: %1</translation>
    </message>
    <message>
        <source>Flow of all heads</source>
        <translation>Caudal de todos</translation>
    </message>
    <message>
        <source>sum over the heads</source>
        <translation>suma de los aspersores</translation>
    </message>
    <message>
        <source>Plan of the book…</source>
        <translation>Plano del libro…</translation>
    </message>
    <message>
        <source>Design</source>
        <translation>Diseño</translation>
    </message>
    <message>
        <source>Against a catch test</source>
        <translation>Frente a una prueba</translation>
    </message>
    <message>
        <source>There is no plan in the book.</source>
        <translation>No hay ningún plano en el libro.</translation>
    </message>
    <message>
        <source>DU, low quarter</source>
        <translation>UD, cuarto inferior</translation>
    </message>
    <message>
        <source>Uniformity coefficient</source>
        <translation>Coef. de uniformidad</translation>
    </message>
    <message>
        <source>Facing, ° from north</source>
        <translation>Orientación, ° del norte</translation>
    </message>
    <message>
        <source>Arc, °</source>
        <translation>Arco, °</translation>
    </message>
    <message>
        <source>&amp;Plan of the book…</source>
        <translation>&amp;Plano del libro…</translation>
    </message>
    <message>
        <source>&amp;Keep in the book</source>
        <translation>&amp;Guardar en el libro</translation>
    </message>
    <message>
        <source>&amp;Save as a file…</source>
        <translation>Guardar como &amp;archivo…</translation>
    </message>
    <message>
        <source>%1, site %2</source>
        <translation>%1, sitio %2</translation>
    </message>
    <message>
        <source>%1, site %2: %3</source>
        <translation>%1, sitio %2: %3</translation>
    </message>
    <message>
        <source>Ctrl+S</source>
        <translation>Ctrl+S</translation>
    </message>
    <message>
        <source>No book is open.</source>
        <translation>No hay ningún libro abierto.</translation>
    </message>
    <message>
        <source>Plan without a name</source>
        <translation>Plano sin nombre</translation>
    </message>
    <message>
        <source>%1 in the book, site %2, revision %3</source>
        <translation>%1 en el libro, sitio %2, revisión %3</translation>
    </message>
    <message>
        <source>from the file %1</source>
        <translation>del archivo %1</translation>
    </message>
    <message>
        <source>of another book</source>
        <translation>de otro libro</translation>
    </message>
    <message>
        <source>kept nowhere yet</source>
        <translation>aún sin guardar</translation>
    </message>
    <message>
        <source>changed since</source>
        <translation>cambiado desde entonces</translation>
    </message>
    <message>
        <source>Changes to the plan</source>
        <translation>Cambios en el plano</translation>
    </message>
    <message>
        <source>The changes to this plan are not in the book. Keep them as the next revision of %1, or give them up?</source>
        <translation>Los cambios de este plano no están en el libro. ¿Guardarlos como la próxima revisión de %1, o renunciar a ellos?</translation>
    </message>
    <message>
        <source>The changes to this plan are kept nowhere. Give them up?</source>
        <translation>Los cambios de este plano no están guardados. ¿Renunciar a ellos?</translation>
    </message>
    <message>
        <source>The plan is in the book as %1, revision %2.</source>
        <translation>El plano está en el libro como %1, revisión %2.</translation>
    </message>
    <message>
        <source>Nothing has changed since it was kept.</source>
        <translation>Nada ha cambiado desde que se guardó.</translation>
    </message>
    <message>
        <source>The plan was not kept</source>
        <translation>El plano no se guardó</translation>
    </message>
    <message>
        <source>Save as a file…</source>
        <translation>Guardar como archivo…</translation>
    </message>
    <message>
        <source>Keep in the book…</source>
        <translation>Guardar en el libro…</translation>
    </message>
    <message>
        <source>&amp;Add a head</source>
        <translation>Añadir un as&amp;persor</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::PlanScene</name>
    <message>
        <source>Move head %1</source>
        <translation>Mover el aspersor %1</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::PlanView</name>
    <message>
        <source>Drawing of the plan</source>
        <translation>Dibujo del plano</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::QueuePanel</name>
    <message>
        <source>the one that each filing names</source>
        <translation>el que nombra cada expediente</translation>
    </message>
    <message>
        <source>From a &amp;file…</source>
        <translation>De un arc&amp;hivo…</translation>
    </message>
    <message>
        <source>Rebate program</source>
        <translation>Programa de reembolso</translation>
    </message>
    <message>
        <source>Programs (*.json)</source>
        <translation>Programas (*.json)</translation>
    </message>
    <message>
        <source>&amp;Program for new filings</source>
        <translation>&amp;Programa para expedientes nuevos</translation>
    </message>
    <message>
        <source>Applications, in the order in which to look at them</source>
        <translation>Solicitudes, en el orden en que conviene mirarlas</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::ReadingsModel</name>
    <message>
        <source>Meter %1 is not in the book.</source>
        <translation>El medidor %1 no está en el libro.</translation>
    </message>
    <message>
        <source>Readings of meter %1</source>
        <translation>Lecturas del medidor %1</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>%1 readings; the days in question are marked.</source>
        <translation>%1 lecturas; los días en cuestión están marcados.</translation>
    </message>
    <message>
        <source>register</source>
        <translation>registro</translation>
    </message>
    <message>
        <source>volume of %1 min</source>
        <translation>volumen de %1 min</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medida</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>estimada</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corregida</translation>
    </message>
    <message>
        <source>Time at the site</source>
        <translation>Hora en el sitio</translation>
    </message>
    <message>
        <source>Value, %1</source>
        <translation>Valor, %1</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Qué tan segura</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::ReportsPage</name>
    <message>
        <source>Reports</source>
        <translation>Informes</translation>
    </message>
    <message>
        <source>Papers to sign, send and keep: look at the pages, then write the files.</source>
        <translation>Papeles para firmar, enviar y guardar: mire las páginas y luego escriba los archivos.</translation>
    </message>
    <message>
        <source>Write the files…</source>
        <translation>Escribir los archivos…</translation>
    </message>
    <message>
        <source>season of a site</source>
        <translation>temporada de un sitio</translation>
    </message>
    <message>
        <source>catch tests of a site</source>
        <translation>pruebas de captación de un sitio</translation>
    </message>
    <message>
        <source>one catch test</source>
        <translation>una prueba de captación</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>&amp;Report</source>
        <translation>&amp;Informe</translation>
    </message>
    <message>
        <source>&amp;Site</source>
        <translation>&amp;Sitio</translation>
    </message>
    <message>
        <source>&amp;Test</source>
        <translation>&amp;Prueba</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Desde</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>&amp;Hasta</translation>
    </message>
    <message>
        <source>&amp;Program</source>
        <translation>&amp;Programa</translation>
    </message>
    <message>
        <source>Pape&amp;r</source>
        <translation>Pape&amp;l</translation>
    </message>
    <message>
        <source>Files</source>
        <translation>Archivos</translation>
    </message>
    <message>
        <source>Workbook (xlsx), figures with their formulas</source>
        <translation>Libro de cálculo (xlsx), cifras con sus fórmulas</translation>
    </message>
    <message>
        <source>PDF, to print and sign</source>
        <translation>PDF, para imprimir y firmar</translation>
    </message>
    <message>
        <source>Tables (csv)</source>
        <translation>Tablas (csv)</translation>
    </message>
    <message>
        <source>Files written</source>
        <translation>Archivos escritos</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Más pequeño</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Más grande</translation>
    </message>
    <message>
        <source>Page width</source>
        <translation>Ancho de página</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Páginas</translation>
    </message>
    <message>
        <source>Pages of the report</source>
        <translation>Páginas del informe</translation>
    </message>
    <message>
        <source>Folder for the files</source>
        <translation>Carpeta para los archivos</translation>
    </message>
    <message>
        <source>No book is open.</source>
        <translation>No hay ningún libro abierto.</translation>
    </message>
    <message>
        <source>There is no site in this book yet.</source>
        <translation>Todavía no hay ningún sitio en este libro.</translation>
    </message>
    <message>
        <source>The meters of this site have no readings yet.</source>
        <translation>Los medidores de este sitio aún no tienen lecturas.</translation>
    </message>
    <message>
        <source>This site has no catch test yet.</source>
        <translation>Este sitio aún no tiene ninguna prueba de captación.</translation>
    </message>
    <message>
        <source>Making the report</source>
        <translation>Preparando el informe</translation>
    </message>
    <message>
        <source>Making the report…</source>
        <translation>Preparando el informe…</translation>
    </message>
    <message>
        <source>Writing the files</source>
        <translation>Escribiendo los archivos</translation>
    </message>
    <message>
        <source>Written to %1:</source>
        <translation>Escrito en %1:</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::ReviewPage</name>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Applications with every figure worked out again from the raw data. A question is not a finding: each has innocent answers.</source>
        <translation>Solicitudes con cada cifra calculada de nuevo a partir de los datos originales. Una pregunta no es una falta: todas tienen respuestas inocentes.</translation>
    </message>
    <message>
        <source>Add filings…</source>
        <translation>Añadir expedientes…</translation>
    </message>
    <message>
        <source>Write memo and letter…</source>
        <translation>Escribir informe y carta…</translation>
    </message>
    <message>
        <source>Filings</source>
        <translation>Expedientes</translation>
    </message>
    <message>
        <source>Filings (*.zip)</source>
        <translation>Expedientes (*.zip)</translation>
    </message>
    <message>
        <source>Folder for memo and letter</source>
        <translation>Carpeta para el informe y la carta</translation>
    </message>
    <message>
        <source>No book is open.</source>
        <translation>No hay ningún libro abierto.</translation>
    </message>
    <message>
        <source>No application yet. Choose the program and add the filings that came in.</source>
        <translation>Todavía no hay solicitudes. Elija el programa y añada los expedientes recibidos.</translation>
    </message>
    <message>
        <source>Working out the applications</source>
        <translation>Calculando las solicitudes</translation>
    </message>
    <message>
        <source>Reviewing the filings</source>
        <translation>Revisando los expedientes</translation>
    </message>
    <message>
        <source>Stopped; the book is as it was.</source>
        <translation>Detenido; el libro está como estaba.</translation>
    </message>
    <message>
        <source>%1 new in the book, %2 refused.</source>
        <translation>%1 nuevos en el libro, %2 rechazados.</translation>
    </message>
    <message>
        <source>Writing memo and letter</source>
        <translation>Escribiendo informe y carta</translation>
    </message>
    <message>
        <source>Memo and letter are in %1.</source>
        <translation>El informe y la carta están en %1.</translation>
    </message>
    <message>
        <source>%1 carries no application number; it stands below the applications.</source>
        <translation>%1 no lleva número de solicitud; está debajo de las solicitudes.</translation>
    </message>
    <message>
        <source>%1 names no program that is known here; it stands below the applications.</source>
        <translation>%1 no nombra ningún programa conocido aquí; está debajo de las solicitudes.</translation>
    </message>
    <message>
        <source>New application…</source>
        <translation>Nueva solicitud…</translation>
    </message>
    <message>
        <source>&amp;Next case</source>
        <translation>Caso siguie&amp;nte</translation>
    </message>
    <message>
        <source>&amp;Previous case</source>
        <translation>Caso &amp;anterior</translation>
    </message>
    <message>
        <source>&amp;Evidence beside the case</source>
        <translation>&amp;Pruebas junto al caso</translation>
    </message>
    <message>
        <source>&amp;Decide</source>
        <translation>&amp;Decidir</translation>
    </message>
    <message>
        <source>&amp;Write the decision</source>
        <translation>&amp;Escribir la decisión</translation>
    </message>
    <message>
        <source>New &amp;application…</source>
        <translation>Nueva &amp;solicitud…</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::ScheduleChoices</name>
    <message>
        <source>&amp;Site</source>
        <translation>&amp;Sitio</translation>
    </message>
    <message>
        <source>Weather &amp;from</source>
        <translation>Clima &amp;desde</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>&amp;Hasta</translation>
    </message>
    <message>
        <source>For the &amp;year</source>
        <translation>Para el &amp;año</translation>
    </message>
    <message>
        <source>&amp;Program</source>
        <translation>&amp;Programa</translation>
    </message>
    <message>
        <source>&amp;Watering rule</source>
        <translation>&amp;Regla de riego</translation>
    </message>
    <message>
        <source>Watering allowed on %1</source>
        <translation>Riego permitido el %1</translation>
    </message>
    <message>
        <source>W&amp;indow opens</source>
        <translation>&amp;Abre</translation>
    </message>
    <message>
        <source>&amp;closes</source>
        <translation>&amp;cierra</translation>
    </message>
    <message>
        <source>St&amp;ations at once</source>
        <translation>Es&amp;taciones a la vez</translation>
    </message>
    <message>
        <source>of the book: %1</source>
        <translation>del libro: %1</translation>
    </message>
    <message>
        <source>none: every day, no window</source>
        <translation>ninguna: todos los días, sin horario</translation>
    </message>
    <message>
        <source>set here</source>
        <translation>fijada aquí</translation>
    </message>
    <message>
        <source>No book is open.</source>
        <translation>No hay ningún libro abierto.</translation>
    </message>
    <message>
        <source>There is no site in this book yet. Bring some in on the Import page.</source>
        <translation>Todavía no hay sitios en este libro. Tráigalos en la página Importar.</translation>
    </message>
    <message>
        <source>The weather station of this site has no days yet.</source>
        <translation>La estación meteorológica de este sitio todavía no tiene días.</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::SchedulePage</name>
    <message>
        <source>Schedule</source>
        <translation>Programa de riego</translation>
    </message>
    <message>
        <source>The base from which to go on: minutes for each station and week, month by month. Adjust it to the weather and to what the ground shows; local watering rules come first.</source>
        <translation>La base de la que partir: minutos por estación y semana, mes a mes. Ajústela al clima y a lo que muestre el terreno; las normas locales de riego van primero.</translation>
    </message>
    <message>
        <source>Minutes a week, by station and month</source>
        <translation>Minutos por semana, por estación y mes</translation>
    </message>
    <message>
        <source>Stations in one month</source>
        <translation>Estaciones en un mes</translation>
    </message>
    <message>
        <source>Start times in one month</source>
        <translation>Horas de comienzo en un mes</translation>
    </message>
    <message>
        <source>Month shown</source>
        <translation>Mes mostrado</translation>
    </message>
    <message>
        <source>Minutes a week</source>
        <translation>Minutos por semana</translation>
    </message>
    <message>
        <source>One month</source>
        <translation>Un mes</translation>
    </message>
    <message>
        <source>Start times</source>
        <translation>Horas de comienzo</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Qué mirar</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>A schedule is no permit: mind local watering days, reclaimed water signs, people on the turf and spray on roads. Do not water where rain has done it.</source>
        <translation>Un programa de riego no es un permiso: atienda los días de riego locales, los avisos de agua regenerada, las personas en el césped y el agua en los caminos. No riegue donde ya llovió.</translation>
    </message>
    <message>
        <source>Working out the schedule</source>
        <translation>Calculando el programa de riego</translation>
    </message>
    <message>
        <source>Working out…</source>
        <translation>Calculando…</translation>
    </message>
    <message>
        <source>A calendar needs days and a window: choose &quot;set here&quot; as the watering rule.</source>
        <translation>Un calendario necesita días y horario: elija «fijada aquí» como regla de riego.</translation>
    </message>
    <message>
        <source>Nothing stands out: every run fits.</source>
        <translation>Nada llama la atención: todo cabe.</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>No se escribió: %1</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Adjust to the weather; do not water where rain has done it. Local watering rules come first.</source>
        <translation>Ajústelo al clima; no riegue donde ya llovió. Las normas locales de riego van primero.</translation>
    </message>
    <message>
        <source>Base schedule of site %1</source>
        <translation>Programa de riego base del sitio %1</translation>
    </message>
    <message>
        <source>Write the table…</source>
        <translation>Escribir la tabla…</translation>
    </message>
    <message>
        <source>Write the calendar…</source>
        <translation>Escribir el calendario…</translation>
    </message>
    <message>
        <source>Write the table</source>
        <translation>Escribir la tabla</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tablas (*.csv)</translation>
    </message>
    <message>
        <source>Write the calendar</source>
        <translation>Escribir el calendario</translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation>Calendarios (*.ics)</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::SeasonPage</name>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>What the turf needed, what was granted, what was used, and where the difference went.</source>
        <translation>Lo que necesitó el césped, lo que se concedió, lo que se usó y adónde fue la diferencia.</translation>
    </message>
    <message>
        <source>&amp;Site</source>
        <translation>&amp;Sitio</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Desde</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>&amp;Hasta</translation>
    </message>
    <message>
        <source>&amp;Program</source>
        <translation>&amp;Programa</translation>
    </message>
    <message>
        <source>Months of the season</source>
        <translation>Meses de la temporada</translation>
    </message>
    <message>
        <source>Areas of the site</source>
        <translation>Zonas del sitio</translation>
    </message>
    <message>
        <source>Use and budget</source>
        <translation>Uso y presupuesto</translation>
    </message>
    <message>
        <source>Added up</source>
        <translation>Acumulado</translation>
    </message>
    <message>
        <source>Where it went</source>
        <translation>Adónde fue</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>Meses</translation>
    </message>
    <message>
        <source>Areas</source>
        <translation>Zonas</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Qué mirar</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Show me the readings</source>
        <translation>Muéstreme las lecturas</translation>
    </message>
    <message>
        <source>No book is open.</source>
        <translation>No hay ningún libro abierto.</translation>
    </message>
    <message>
        <source>There is no site in this book yet. Bring some in on the Import page.</source>
        <translation>Todavía no hay ningún sitio en este libro. Tráigalos en la página Importar.</translation>
    </message>
    <message>
        <source>The meters of this site have no readings yet.</source>
        <translation>Los medidores de este sitio aún no tienen lecturas.</translation>
    </message>
    <message>
        <source>Adding up the season</source>
        <translation>Sumando la temporada</translation>
    </message>
    <message>
        <source>Adding up…</source>
        <translation>Sumando…</translation>
    </message>
    <message>
        <source>Limit: %1
Source: %2
How sure: %3</source>
        <translation>Límite: %1
Fuente: %2
Qué tan seguro: %3</translation>
    </message>
    <message>
        <source>Nothing stands out.</source>
        <translation>Nada llama la atención.</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::Session</name>
    <message>
        <source>This book may not be written here, so it is open for reading only.</source>
        <translation>Este libro no se puede escribir aquí, así que está abierto solo para lectura.</translation>
    </message>
    <message>
        <source>This book is open in another window (%1 on %2), so it is open for reading only here.</source>
        <translation>Este libro está abierto en otra ventana (%1 en %2), así que aquí está abierto solo para lectura.</translation>
    </message>
    <message>
        <source>a program</source>
        <translation>un programa</translation>
    </message>
    <message>
        <source>this computer</source>
        <translation>este equipo</translation>
    </message>
    <message>
        <source>Entries cannot be kept safe in %1: %2</source>
        <translation>Las anotaciones no se pueden resguardar en %1: %2</translation>
    </message>
    <message>
        <source>%1 is still going on. Stop it first, or wait.</source>
        <translation>%1: sigue en curso. Deténgalo primero o espere.</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::SheetModel</name>
    <message>
        <source>Can %1: found &quot;%2&quot;, expected a number, 0 or more</source>
        <translation>Recipiente %1: se encontró «%2», se esperaba un número, 0 o más</translation>
    </message>
    <message>
        <source>Can %1 is left out: %2</source>
        <translation>El recipiente %1 está excluido: %2</translation>
    </message>
    <message>
        <source>Can %1</source>
        <translation>Recipiente %1</translation>
    </message>
    <message>
        <source>Can %1: %2</source>
        <translation>Recipiente %1: %2</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>aún sin leer</translation>
    </message>
    <message>
        <source>Reading of can %1</source>
        <translation>Lectura del recipiente %1</translation>
    </message>
    <message>
        <source>Count can %1</source>
        <translation>Contar el recipiente %1</translation>
    </message>
    <message>
        <source>Leave out can %1</source>
        <translation>Excluir el recipiente %1</translation>
    </message>
    <message>
        <source>left of the path</source>
        <translation>izquierda de la pasada</translation>
    </message>
    <message>
        <source>right of the path</source>
        <translation>derecha de la pasada</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::SitesModel</name>
    <message>
        <source>none yet</source>
        <translation>aún ninguna</translation>
    </message>
    <message>
        <source>%1 (and %2 more)</source>
        <translation>%1 (y %2 más)</translation>
    </message>
    <message>
        <source>not judged: %1</source>
        <translation>sin evaluar: %1</translation>
    </message>
    <message>
        <source>nothing stands out</source>
        <translation>nada llama la atención</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Sitio</translation>
    </message>
    <message>
        <source>Organisation</source>
        <translation>Organización</translation>
    </message>
    <message>
        <source>Areas</source>
        <translation>Zonas</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>Last reading</source>
        <translation>Última lectura</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Qué mirar</translation>
    </message>
    <message>
        <source>no readings</source>
        <translation>sin lecturas</translation>
    </message>
    <message>
        <source>Over last year&apos;s budget</source>
        <translation>Sobre el presupuesto, último año</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::SitesPage</name>
    <message>
        <source>Sites</source>
        <translation>Sitios</translation>
    </message>
    <message>
        <source>The places you answer for, and what to look at first.</source>
        <translation>Los lugares por los que usted responde y qué mirar primero.</translation>
    </message>
    <message>
        <source>Search by name, code or organisation</source>
        <translation>Buscar por nombre, código u organización</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Only what needs attention</source>
        <translation>Solo lo que requiere atención</translation>
    </message>
    <message>
        <source>Season of this site</source>
        <translation>Temporada de este sitio</translation>
    </message>
    <message>
        <source>Areas of the site</source>
        <translation>Zonas del sitio</translation>
    </message>
    <message>
        <source>Looking through the sites</source>
        <translation>Revisando los sitios</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>Plant</source>
        <translation>Planta</translation>
    </message>
    <message>
        <source>Heads</source>
        <translation>Aspersores</translation>
    </message>
    <message>
        <source>Soil</source>
        <translation>Suelo</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Medidor</translation>
    </message>
    <message>
        <source>No book is open.</source>
        <translation>No hay ningún libro abierto.</translation>
    </message>
    <message>
        <source>There is no site in this book yet. Bring some in on the Import page.</source>
        <translation>Este libro aún no tiene sitios. Traiga algunos en la página Importar.</translation>
    </message>
    <message>
        <source>No site that needs attention matches.</source>
        <translation>Ningún sitio que requiera atención coincide.</translation>
    </message>
    <message>
        <source>No site matches &quot;%1&quot;.</source>
        <translation>Ningún sitio coincide con «%1».</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::StartPage</name>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>A book keeps the water of all your sites in one file.</source>
        <translation>Un libro guarda el agua de todos sus sitios en un archivo.</translation>
    </message>
    <message>
        <source>Look around</source>
        <translation>Mirar</translation>
    </message>
    <message>
        <source>A book with an invented sod farm and campus: two seasons of readings, weather and catch tests, with a few faults to find.</source>
        <translation>Un libro con una granja de césped y un campus inventados: dos temporadas de lecturas, tiempo y pruebas de captación, con algunas fallas por encontrar.</translation>
    </message>
    <message>
        <source>Make the demo book…</source>
        <translation>Crear el libro de demostración…</translation>
    </message>
    <message>
        <source>Begin your own</source>
        <translation>Empezar el suyo</translation>
    </message>
    <message>
        <source>An empty book. Bring your sites, meters, readings and weather as tables, or fill in a field sheet right away.</source>
        <translation>Un libro vacío. Traiga sus sitios, medidores, lecturas y tiempo como tablas, o llene enseguida una hoja de campo.</translation>
    </message>
    <message>
        <source>New book…</source>
        <translation>Libro nuevo…</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Open a book from this computer or from a shared folder.</source>
        <translation>Abra un libro de este equipo o de una carpeta compartida.</translation>
    </message>
    <message>
        <source>Open a book…</source>
        <translation>Abrir un libro…</translation>
    </message>
    <message>
        <source>Recent books</source>
        <translation>Libros recientes</translation>
    </message>
    <message>
        <source>None yet. Books that you open are listed here.</source>
        <translation>Todavía ninguno. Los libros que abra aparecen aquí.</translation>
    </message>
    <message>
        <source>Double click or Return opens one.</source>
        <translation>Doble clic o Intro abre uno.</translation>
    </message>
    <message>
        <source>with entries of the field sheet that are not in the book</source>
        <translation>con anotaciones de la hoja de campo que no están en el libro</translation>
    </message>
</context>
<context>
    <name>evenfall::desktop::TextTable</name>
    <message>
        <source>Row %1, %2: %3</source>
        <translation>Fila %1, %2: %3</translation>
    </message>
</context>
<context>
    <name>exchange</name>
    <message>
        <source>%1; the file may be cut short</source>
        <translation>%1; puede que el archivo esté cortado</translation>
    </message>
    <message>
        <source>a day of the calendar such as 2024-06-30</source>
        <translation>un día del calendario, como 2024-06-30</translation>
    </message>
    <message>
        <source>day, month and four-digit year such as 30/06/2024</source>
        <translation>día, mes y año de cuatro cifras, como 30/06/2024</translation>
    </message>
    <message>
        <source>month, day and four-digit year such as 06/30/2024</source>
        <translation>mes, día y año de cuatro cifras, como 06/30/2024</translation>
    </message>
    <message>
        <source>four-digit year, month and day such as 2024/06/30</source>
        <translation>año de cuatro cifras, mes y día, como 2024/06/30</translation>
    </message>
    <message>
        <source>a value; this column may not be empty</source>
        <translation>un valor; esta columna no puede estar vacía</translation>
    </message>
    <message>
        <source>a number such as %1, without unit or thousands mark</source>
        <translation>un número como %1, sin unidad ni separador de miles</translation>
    </message>
    <message>
        <source>a number; this column may not be empty</source>
        <translation>un número; esta columna no puede estar vacía</translation>
    </message>
    <message>
        <source>a whole number from %1 to %2</source>
        <translation>un número entero de %1 a %2</translation>
    </message>
    <message>
        <source>a time such as 2024-06-30T06:00 (site&apos;s clock) or 2024-06-30T13:00:00Z</source>
        <translation>una hora como 2024-06-30T06:00 (reloj del sitio) o 2024-06-30T13:00:00Z</translation>
    </message>
    <message>
        <source>%1, then a time such as 06:00</source>
        <translation>%1, y después una hora como 06:00</translation>
    </message>
    <message>
        <source>book, file, or nothing</source>
        <translation>book, file o nada</translation>
    </message>
    <message>
        <source>each value of a record once; it stands in row %1 too</source>
        <translation>cada valor de un registro una sola vez; también está en la fila %1</translation>
    </message>
    <message>
        <source>file for one value of the %1 at most; row %2 says file as well</source>
        <translation>file para un solo valor de %1; la fila %2 también dice file</translation>
    </message>
    <message>
        <source>a file for the conflicts that can be written</source>
        <translation>un archivo para los conflictos que se pueda escribir</translation>
    </message>
    <message>
        <source>%1 as the book has it for the %2, or an explicit choice which of the two stands</source>
        <translation>%1, como lo tiene el libro para %2, o una elección expresa de cuál de los dos queda</translation>
    </message>
    <message>
        <source>a record for which these files have another value than the book</source>
        <translation>un registro para el que estos archivos tienen otro valor que el libro</translation>
    </message>
    <message>
        <source>&quot;%1&quot;, which the file now has for the %2; a choice holds for the values it was made on</source>
        <translation>&quot;%1&quot;, que el archivo tiene ahora para %2; una elección vale para los valores sobre los que se hizo</translation>
    </message>
    <message>
        <source>&quot;%1&quot;, which the book now has for the %2; a choice holds for the values it was made on</source>
        <translation>&quot;%1&quot;, que el libro tiene ahora para %2; una elección vale para los valores sobre los que se hizo</translation>
    </message>
    <message>
        <source>a SHA-256 digest, blanks and a path</source>
        <translation>un resumen SHA-256, espacios y una ruta</translation>
    </message>
    <message>
        <source>each path once</source>
        <translation>cada ruta una sola vez</translation>
    </message>
    <message>
        <source>a label, a colon and a value</source>
        <translation>una etiqueta, dos puntos y un valor</translation>
    </message>
    <message>
        <source>each label once</source>
        <translation>cada etiqueta una sola vez</translation>
    </message>
    <message>
        <source>a file beside the bag&apos;s folder</source>
        <translation>un archivo fuera de la carpeta de la bolsa</translation>
    </message>
    <message>
        <source>one folder at the top</source>
        <translation>una sola carpeta en el nivel superior</translation>
    </message>
    <message>
        <source>a second folder</source>
        <translation>una segunda carpeta</translation>
    </message>
    <message>
        <source>%1 bytes</source>
        <translation>%1 bytes</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>no such file</source>
        <translation>no existe el archivo</translation>
    </message>
    <message>
        <source>a bag with this file</source>
        <translation>una bolsa con este archivo</translation>
    </message>
    <message>
        <source>text that is not UTF-8</source>
        <translation>texto que no es UTF-8</translation>
    </message>
    <message>
        <source>the file that %1 lists</source>
        <translation>el archivo que enumera %1</translation>
    </message>
    <message>
        <source>a changed file: SHA-256 %1</source>
        <translation>un archivo modificado: SHA-256 %1</translation>
    </message>
    <message>
        <source>%1 as in %2</source>
        <translation>%1 como en %2</translation>
    </message>
    <message>
        <source>a file that %1 does not list</source>
        <translation>un archivo que %1 no enumera</translation>
    </message>
    <message>
        <source>only listed files</source>
        <translation>solo archivos enumerados</translation>
    </message>
    <message>
        <source>no Ed25519 public key</source>
        <translation>ninguna clave pública Ed25519</translation>
    </message>
    <message>
        <source>a key in PEM</source>
        <translation>una clave en PEM</translation>
    </message>
    <message>
        <source>a text that does not fit this bag</source>
        <translation>un texto que no corresponde a esta bolsa</translation>
    </message>
    <message>
        <source>the digests of bag-info.txt, bagit.txt and manifest-sha256.txt</source>
        <translation>los resúmenes de bag-info.txt, bagit.txt y manifest-sha256.txt</translation>
    </message>
    <message>
        <source>a signature that this key did not make</source>
        <translation>una firma que no hizo esta clave</translation>
    </message>
    <message>
        <source>a signature by the key %1</source>
        <translation>una firma de la clave %1</translation>
    </message>
    <message>
        <source>an empty file</source>
        <translation>un archivo vacío</translation>
    </message>
    <message>
        <source>BagIt-Version: 1.0 and UTF-8</source>
        <translation>BagIt-Version: 1.0 y UTF-8</translation>
    </message>
    <message>
        <source>files to be fetched elsewhere</source>
        <translation>archivos que habría que traer de otro lugar</translation>
    </message>
    <message>
        <source>a bag that holds all its files</source>
        <translation>una bolsa que contenga todos sus archivos</translation>
    </message>
    <message>
        <source>a manifest of another kind</source>
        <translation>un manifiesto de otra clase</translation>
    </message>
    <message>
        <source>SHA-256 manifests only</source>
        <translation>solo manifiestos SHA-256</translation>
    </message>
    <message>
        <source>a name of letters, digits, &quot;-&quot;, &quot;_&quot; and &quot;.&quot;</source>
        <translation>un nombre de letras, cifras, «-», «_» y «.»</translation>
    </message>
    <message>
        <source>a plain relative path</source>
        <translation>una ruta relativa sencilla</translation>
    </message>
    <message>
        <source>a path twice</source>
        <translation>una ruta dos veces</translation>
    </message>
    <message>
        <source>a file without a size</source>
        <translation>un archivo sin tamaño</translation>
    </message>
    <message>
        <source>a regular file</source>
        <translation>un archivo corriente</translation>
    </message>
    <message>
        <source>UTF-8 text on one line</source>
        <translation>texto UTF-8 en una línea</translation>
    </message>
    <message>
        <source>the cryptographic library reported a failure</source>
        <translation>la biblioteca criptográfica comunicó un fallo</translation>
    </message>
    <message>
        <source>a file that cannot be opened</source>
        <translation>un archivo que no se puede abrir</translation>
    </message>
    <message>
        <source>a file that can be read</source>
        <translation>un archivo que se pueda leer</translation>
    </message>
    <message>
        <source>a file that cannot be read to its end</source>
        <translation>un archivo que no se puede leer hasta el final</translation>
    </message>
    <message>
        <source>an Ed25519 private key in PEM, without a passphrase</source>
        <translation>una clave privada Ed25519 en PEM, sin contraseña</translation>
    </message>
    <message>
        <source>something that is not read as a private key</source>
        <translation>algo que no se lee como clave privada</translation>
    </message>
    <message>
        <source>a key of another kind</source>
        <translation>una clave de otra clase</translation>
    </message>
    <message>
        <source>a file that is too short or cannot be read</source>
        <translation>un archivo demasiado corto o que no se puede leer</translation>
    </message>
    <message>
        <source>a zip file</source>
        <translation>un archivo zip</translation>
    </message>
    <message>
        <source>no end record at the end of the file</source>
        <translation>ningún registro final al final del archivo</translation>
    </message>
    <message>
        <source>a whole zip file without anything behind it</source>
        <translation>un archivo zip entero y sin nada detrás</translation>
    </message>
    <message>
        <source>a zip of several volumes or with 64-bit fields</source>
        <translation>un zip de varios volúmenes o con campos de 64 bits</translation>
    </message>
    <message>
        <source>a plain zip file</source>
        <translation>un archivo zip sencillo</translation>
    </message>
    <message>
        <source>a directory that does not end where the file ends</source>
        <translation>un directorio que no termina donde termina el archivo</translation>
    </message>
    <message>
        <source>a zip file without gaps, nothing before or behind it</source>
        <translation>un archivo zip sin huecos y sin nada delante ni detrás</translation>
    </message>
    <message>
        <source>an empty name</source>
        <translation>un nombre vacío</translation>
    </message>
    <message>
        <source>a name of %1 bytes</source>
        <translation>un nombre de %1 bytes</translation>
    </message>
    <message>
        <source>a name that is not UTF-8</source>
        <translation>un nombre que no es UTF-8</translation>
    </message>
    <message>
        <source>a control character in a name</source>
        <translation>un carácter de control en un nombre</translation>
    </message>
    <message>
        <source>the character %1 in a name</source>
        <translation>el carácter %1 en un nombre</translation>
    </message>
    <message>
        <source>an absolute path</source>
        <translation>una ruta absoluta</translation>
    </message>
    <message>
        <source>an empty part of a path</source>
        <translation>una parte vacía de una ruta</translation>
    </message>
    <message>
        <source>a path that leaves its folder</source>
        <translation>una ruta que sale de su carpeta</translation>
    </message>
    <message>
        <source>a blank or a dot at the edge of a name</source>
        <translation>un espacio o un punto en el borde de un nombre</translation>
    </message>
    <message>
        <source>nothing that can be read</source>
        <translation>nada que se pueda leer</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation>%1 entradas</translation>
    </message>
    <message>
        <source>a zip that cannot be opened (%1)</source>
        <translation>un zip que no se puede abrir (%1)</translation>
    </message>
    <message>
        <source>a sound zip file</source>
        <translation>un archivo zip íntegro</translation>
    </message>
    <message>
        <source>a directory that can be read in two ways</source>
        <translation>un directorio que se puede leer de dos maneras</translation>
    </message>
    <message>
        <source>a zip file with one directory</source>
        <translation>un archivo zip con un solo directorio</translation>
    </message>
    <message>
        <source>an entry that cannot be read</source>
        <translation>una entrada que no se puede leer</translation>
    </message>
    <message>
        <source>a plain relative path below the bag&apos;s folder</source>
        <translation>una ruta relativa sencilla dentro de la carpeta de la bolsa</translation>
    </message>
    <message>
        <source>a name that occurs twice</source>
        <translation>un nombre que aparece dos veces</translation>
    </message>
    <message>
        <source>each name once, capitals not counting</source>
        <translation>cada nombre una sola vez, sin contar las mayúsculas</translation>
    </message>
    <message>
        <source>a link or a special file</source>
        <translation>un enlace o un archivo especial</translation>
    </message>
    <message>
        <source>regular files and folders only</source>
        <translation>solo archivos corrientes y carpetas</translation>
    </message>
    <message>
        <source>an encrypted entry</source>
        <translation>una entrada cifrada</translation>
    </message>
    <message>
        <source>entries that anyone can read</source>
        <translation>entradas que cualquiera pueda leer</translation>
    </message>
    <message>
        <source>compression method %1</source>
        <translation>método de compresión %1</translation>
    </message>
    <message>
        <source>stored or deflated</source>
        <translation>sin comprimir o con «deflate»</translation>
    </message>
    <message>
        <source>a folder with contents of its own</source>
        <translation>una carpeta con contenido propio</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>una carpeta</translation>
    </message>
    <message>
        <source>%1 bytes unpacked</source>
        <translation>%1 bytes al desempaquetar</translation>
    </message>
    <message>
        <source>at most %1 in all entries together</source>
        <translation>como máximo %1 entre todas las entradas</translation>
    </message>
    <message>
        <source>%1 bytes that unpack to %2</source>
        <translation>%1 bytes que al desempaquetar dan %2</translation>
    </message>
    <message>
        <source>at most %1 times as much</source>
        <translation>como máximo %1 veces más</translation>
    </message>
    <message>
        <source>an entry that cannot be opened</source>
        <translation>una entrada que no se puede abrir</translation>
    </message>
    <message>
        <source>damaged data (%1)</source>
        <translation>datos dañados (%1)</translation>
    </message>
    <message>
        <source>data that match their checksum in the zip</source>
        <translation>datos que coincidan con su suma de control en el zip</translation>
    </message>
    <message>
        <source>data of another length than stated</source>
        <translation>datos de otra longitud que la indicada</translation>
    </message>
    <message>
        <source>a file that is already there</source>
        <translation>un archivo que ya existe</translation>
    </message>
    <message>
        <source>a place that cannot be written</source>
        <translation>un lugar donde no se puede escribir</translation>
    </message>
    <message>
        <source>a new file</source>
        <translation>un archivo nuevo</translation>
    </message>
    <message>
        <source>a readable source</source>
        <translation>un origen que se pueda leer</translation>
    </message>
    <message>
        <source>a name that is free</source>
        <translation>un nombre que esté libre</translation>
    </message>
    <message>
        <source>an entry that can be written</source>
        <translation>una entrada que se pueda escribir</translation>
    </message>
    <message>
        <source>a file that could not be written (%1)</source>
        <translation>un archivo que no se pudo escribir (%1)</translation>
    </message>
    <message>
        <source>room and the right to write</source>
        <translation>espacio y permiso para escribir</translation>
    </message>
    <message>
        <source>the same value in all rows of one test</source>
        <translation>el mismo valor en todas las filas de una prueba</translation>
    </message>
    <message>
        <source>a value of zero or more</source>
        <translation>un valor de cero o más</translation>
    </message>
    <message>
        <source>no such column</source>
        <translation>no existe la columna</translation>
    </message>
    <message>
        <source>a column %1, to keep the test in a book</source>
        <translation>una columna %1, para guardar la prueba en un libro</translation>
    </message>
    <message>
        <source>both x and y, in one unit</source>
        <translation>x e y las dos, en una misma unidad</translation>
    </message>
    <message>
        <source>x and y in one unit</source>
        <translation>x e y en una misma unidad</translation>
    </message>
    <message>
        <source>a distance from the path beside the side</source>
        <translation>una distancia desde el recorrido además del lado</translation>
    </message>
    <message>
        <source>the same area in all rows of one test</source>
        <translation>la misma zona en todas las filas de una prueba</translation>
    </message>
    <message>
        <source>the same day in all rows of one test</source>
        <translation>el mismo día en todas las filas de una prueba</translation>
    </message>
    <message>
        <source>a throat area above zero</source>
        <translation>un área de la boca mayor que cero</translation>
    </message>
    <message>
        <source>minutes above zero</source>
        <translation>minutos por encima de cero</translation>
    </message>
    <message>
        <source>grid, pivot, traveller, lateral or irregular</source>
        <translation>grid, pivot, traveller, lateral o irregular</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>yes (sí) o no</translation>
    </message>
    <message>
        <source>a distance of zero or more</source>
        <translation>una distancia de cero o más</translation>
    </message>
    <message>
        <source>left or right, looking along the pull</source>
        <translation>left (izquierda) o right (derecha), mirando a lo largo de la pasada</translation>
    </message>
    <message>
        <source>a catch of zero or more</source>
        <translation>una lectura de cero o más</translation>
    </message>
    <message>
        <source>minutes of this station</source>
        <translation>los minutos de esta estación</translation>
    </message>
    <message>
        <source>the same minutes in all rows of one station</source>
        <translation>los mismos minutos en todas las filas de una estación</translation>
    </message>
    <message>
        <source>one place for each can</source>
        <translation>un solo lugar para cada recipiente</translation>
    </message>
    <message>
        <source>each can once in a test; this one stands in row %1 too</source>
        <translation>cada recipiente una sola vez en una prueba; este está también en la fila %1</translation>
    </message>
    <message>
        <source>at most %1 cans in a test</source>
        <translation>como máximo %1 recipientes en una prueba</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 o %2</translation>
    </message>
    <message>
        <source>a column of the %1 table</source>
        <translation>una columna de la tabla %1</translation>
    </message>
    <message>
        <source>a column of the %1 table; the nearest is %2</source>
        <translation>una columna de la tabla %1; la más parecida es %2</translation>
    </message>
    <message>
        <source>%1 (known: %2)</source>
        <translation>%1 (conocidas: %2)</translation>
    </message>
    <message>
        <source>a column %1 in a %2 table</source>
        <translation>una columna %1 en una tabla %2</translation>
    </message>
    <message>
        <source>one of the kinds %1</source>
        <translation>una de las clases %1</translation>
    </message>
    <message>
        <source>one column for this, and there is %1</source>
        <translation>una sola columna para esto, y ya está %1</translation>
    </message>
    <message>
        <source>a kind of table; both %1 and %2 have these columns, so name it</source>
        <translation>una clase de tabla; tanto %1 como %2 tienen estas columnas, así que nómbrela</translation>
    </message>
    <message>
        <source>the header of one of the tables %1</source>
        <translation>el encabezado de una de las tablas %1</translation>
    </message>
    <message>
        <source>a CSV file</source>
        <translation>un archivo CSV</translation>
    </message>
    <message>
        <source>a line of at most %1 bytes; this is no table</source>
        <translation>una línea de %1 bytes como máximo; esto no es una tabla</translation>
    </message>
    <message>
        <source>UTF-16 text</source>
        <translation>texto UTF-16</translation>
    </message>
    <message>
        <source>UTF-8 text; save the table as &quot;CSV UTF-8&quot;</source>
        <translation>texto UTF-8; guarde la tabla como «CSV UTF-8»</translation>
    </message>
    <message>
        <source>a packed file</source>
        <translation>un archivo empaquetado</translation>
    </message>
    <message>
        <source>CSV text; a workbook needs its ending .xlsx or .ods</source>
        <translation>texto CSV; un libro de cálculo necesita su terminación .xlsx u .ods</translation>
    </message>
    <message>
        <source>a header line and at least one row</source>
        <translation>una línea de encabezado y al menos una fila</translation>
    </message>
    <message>
        <source>a header line with closed quotes</source>
        <translation>una línea de encabezado con las comillas cerradas</translation>
    </message>
    <message>
        <source>column %1 without a name</source>
        <translation>columna %1 sin nombre</translation>
    </message>
    <message>
        <source>a name for each column</source>
        <translation>un nombre para cada columna</translation>
    </message>
    <message>
        <source>each column once</source>
        <translation>cada columna una sola vez</translation>
    </message>
    <message>
        <source>a cell of at most %1 bytes</source>
        <translation>una celda de %1 bytes como máximo</translation>
    </message>
    <message>
        <source>more than %1 cells</source>
        <translation>más de %1 celdas</translation>
    </message>
    <message>
        <source>a narrower table</source>
        <translation>una tabla más estrecha</translation>
    </message>
    <message>
        <source>quotes around a whole cell, and doubled inside it</source>
        <translation>comillas alrededor de la celda entera, y dobles dentro de ella</translation>
    </message>
    <message>
        <source>lines that end in LF or CRLF; this one has a lone CR</source>
        <translation>líneas que terminen en LF o CRLF; esta tiene un CR suelto</translation>
    </message>
    <message>
        <source>a delimiter or the end of the line after a closing quote</source>
        <translation>un separador o el fin de la línea tras las comillas de cierre</translation>
    </message>
    <message>
        <source>a whole row; the file ends in the middle of this one, so it was cut short</source>
        <translation>una fila entera; el archivo termina en medio de esta, así que está cortado</translation>
    </message>
    <message>
        <source>%1 cells</source>
        <translation>%1 celdas</translation>
    </message>
    <message>
        <source>%1 cells as in the header</source>
        <translation>%1 celdas como en el encabezado</translation>
    </message>
    <message>
        <source>UTF-8 text</source>
        <translation>texto UTF-8</translation>
    </message>
    <message>
        <source>%1: the last line has no line end. If the file was cut short, its last value is too; compare it with the source.</source>
        <translation>%1: a la última línea le falta el fin de línea. Si el archivo se cortó, su último valor también; compárelo con el origen.</translation>
    </message>
    <message>
        <source>the same test in every row of this file</source>
        <translation>la misma prueba en todas las filas de este archivo</translation>
    </message>
    <message>
        <source>minor, moderate or severe</source>
        <translation>minor (leve), moderate (moderado) o severe (grave)</translation>
    </message>
    <message>
        <source>either findings or none, in one table</source>
        <translation>hallazgos o ninguno, en una misma tabla</translation>
    </message>
    <message>
        <source>a value that JSON does not have</source>
        <translation>un valor que JSON no tiene</translation>
    </message>
    <message>
        <source>a JSON value</source>
        <translation>un valor de JSON</translation>
    </message>
    <message>
        <source>a number that is not finite</source>
        <translation>un número que no es finito</translation>
    </message>
    <message>
        <source>a finite number</source>
        <translation>un número finito</translation>
    </message>
    <message>
        <source>a file that the filing does not list</source>
        <translation>un archivo que el expediente no enumera</translation>
    </message>
    <message>
        <source>listed attachments only</source>
        <translation>solo adjuntos enumerados</translation>
    </message>
    <message>
        <source>a file other than the one the filing lists</source>
        <translation>un archivo distinto del que enumera el expediente</translation>
    </message>
    <message>
        <source>the attachment that the filing lists</source>
        <translation>el adjunto que enumera el expediente</translation>
    </message>
    <message>
        <source>no signature</source>
        <translation>ninguna firma</translation>
    </message>
    <message>
        <source>one by the key that the filing names, %1</source>
        <translation>una de la clave que nombra el expediente, %1</translation>
    </message>
    <message>
        <source>the key %1</source>
        <translation>la clave %1</translation>
    </message>
    <message>
        <source>no signature: the filing names no key</source>
        <translation>ninguna firma: el expediente no nombra ninguna clave</translation>
    </message>
    <message>
        <source>the key that the filing names, %1</source>
        <translation>la clave que nombra el expediente, %1</translation>
    </message>
    <message>
        <source>a filing</source>
        <translation>un expediente</translation>
    </message>
    <message>
        <source>a folder named %1</source>
        <translation>una carpeta llamada %1</translation>
    </message>
    <message>
        <source>the filing&apos;s code, %1</source>
        <translation>el código del expediente, %1</translation>
    </message>
    <message>
        <source>nothing that can be attached</source>
        <translation>nada que se pueda adjuntar</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>uno de %1</translation>
    </message>
    <message>
        <source>pairs of longitude and latitude in degrees</source>
        <translation>pares de longitud y latitud en grados</translation>
    </message>
    <message>
        <source>no size above zero</source>
        <translation>ninguna superficie mayor que cero</translation>
    </message>
    <message>
        <source>the size of the area</source>
        <translation>la superficie de la zona</translation>
    </message>
    <message>
        <source>[instant, seconds, value, &quot;measured&quot;] with sensible values</source>
        <translation>[instante, segundos, valor, &quot;measured&quot;] con valores razonables</translation>
    </message>
    <message>
        <source>readings in order of time</source>
        <translation>lecturas en orden de tiempo</translation>
    </message>
    <message>
        <source>a value</source>
        <translation>un valor</translation>
    </message>
    <message>
        <source>its unit under weather.units</source>
        <translation>su unidad en weather.units</translation>
    </message>
    <message>
        <source>days in order, each once</source>
        <translation>días en orden, cada uno una sola vez</translation>
    </message>
    <message>
        <source>%1 twice</source>
        <translation>%1 dos veces</translation>
    </message>
    <message>
        <source>each code once</source>
        <translation>cada código una sola vez</translation>
    </message>
    <message>
        <source>a code that the filing holds</source>
        <translation>un código que el expediente contenga</translation>
    </message>
    <message>
        <source>canonical form (RFC 8785), here %1</source>
        <translation>forma canónica (RFC 8785), aquí %1</translation>
    </message>
    <message>
        <source>a byte that is no UTF-8</source>
        <translation>un byte que no es UTF-8</translation>
    </message>
    <message>
        <source>form %1 at most: this filing is from a newer program</source>
        <translation>forma %1 como máximo: este expediente es de un programa más nuevo</translation>
    </message>
    <message>
        <source>a file that ends in .xlsx, .ods, .geojson, .shp, .zip, .kml, .kmz, .gpkg or .dxf</source>
        <translation>un archivo que termine en .xlsx, .ods, .geojson, .shp, .zip, .kml, .kmz, .gpkg o .dxf</translation>
    </message>
    <message>
        <source>a file of at most %1 when unpacked; this one would take %2 MiB</source>
        <translation>un archivo de %1 como máximo al desempaquetar; este ocuparía %2 MiB</translation>
    </message>
    <message>
        <source>a packed file that can be opened</source>
        <translation>un archivo empaquetado que se pueda abrir</translation>
    </message>
    <message>
        <source>a packed file with at most 10,000 files in it</source>
        <translation>un archivo empaquetado con 10,000 archivos dentro como máximo</translation>
    </message>
    <message>
        <source>a zip with its Shapefiles in one folder</source>
        <translation>un zip con sus Shapefiles en una sola carpeta</translation>
    </message>
    <message>
        <source>a zip with a Shapefile (.shp with .shx, .dbf and .prj) in it</source>
        <translation>un zip con un Shapefile dentro (.shp con .shx, .dbf y .prj)</translation>
    </message>
    <message>
        <source>an ordinary file of this machine</source>
        <translation>un archivo corriente de este equipo</translation>
    </message>
    <message>
        <source>a file in the form that its ending says: %1</source>
        <translation>un archivo de la forma que dice su terminación: %1</translation>
    </message>
    <message>
        <source>a file that needs nothing from the network</source>
        <translation>un archivo que no necesite nada de la red</translation>
    </message>
    <message>
        <source>a file that can be read to its end; reading broke off with: %1</source>
        <translation>un archivo que se pueda leer hasta el final; la lectura se interrumpió con: %1</translation>
    </message>
    <message>
        <source>a workbook with a sheet in it</source>
        <translation>un libro de cálculo con alguna hoja</translation>
    </message>
    <message>
        <source>a workbook with a sheet &quot;%1&quot;</source>
        <translation>un libro de cálculo con una hoja «%1»</translation>
    </message>
    <message>
        <source>a coordinate reference system such as EPSG:32612, not &quot;%1&quot;</source>
        <translation>un sistema de referencia de coordenadas como EPSG:32612, no «%1»</translation>
    </message>
    <message>
        <source>it has no outline</source>
        <translation>no tiene contorno</translation>
    </message>
    <message>
        <source>its outline crosses itself or a hole lies outside it</source>
        <translation>su contorno se cruza a sí mismo o un hueco queda fuera de él</translation>
    </message>
    <message>
        <source>its coordinates cannot be brought to longitude and latitude</source>
        <translation>sus coordenadas no se pueden convertir en longitud y latitud</translation>
    </message>
    <message>
        <source>it is a point or an open line, not an outline</source>
        <translation>es un punto o una línea abierta, no un contorno</translation>
    </message>
    <message>
        <source>at most 100,000 outlines in a file</source>
        <translation>100,000 contornos como máximo en un archivo</translation>
    </message>
    <message>
        <source>a map with at least one outline</source>
        <translation>un mapa con al menos un contorno</translation>
    </message>
    <message>
        <source>each column once, and &quot;%1&quot; stands twice</source>
        <translation>cada columna una sola vez, y «%1» está dos veces</translation>
    </message>
    <message>
        <source>a sheet with a header row</source>
        <translation>una hoja con una fila de encabezado</translation>
    </message>
    <message>
        <source>a sheet that breaks off</source>
        <translation>una hoja que se interrumpe</translation>
    </message>
    <message>
        <source>a reference system: the file names none. Name &quot;crs&quot; in a map, or &quot;drawing_unit&quot; when it is a plane drawing</source>
        <translation>un sistema de referencia: el archivo no nombra ninguno. Nombre «crs» en un mapa, o «drawing_unit» si es un dibujo plano</translation>
    </message>
    <message>
        <source>a valid outline; %1</source>
        <translation>un contorno válido; %1</translation>
    </message>
    <message>
        <source>%1: attributes that are no columns of the areas table were left out: %2</source>
        <translation>%1: se excluyeron atributos que no son columnas de la tabla de zonas: %2</translation>
    </message>
    <message>
        <source>it has %1</source>
        <translation>tiene %1</translation>
    </message>
    <message>
        <source>the module for workbooks and maps, installed beside the program</source>
        <translation>el módulo para libros de cálculo y mapas, instalado junto al programa</translation>
    </message>
    <message>
        <source>each time once; this one stands in row %1 too</source>
        <translation>cada hora una sola vez; esta está también en la fila %1</translation>
    </message>
    <message>
        <source>%1 minutes from row to row</source>
        <translation>%1 minutos de fila a fila</translation>
    </message>
    <message>
        <source>rows an hour or less apart</source>
        <translation>filas separadas una hora o menos</translation>
    </message>
    <message>
        <source>one station in this file</source>
        <translation>una sola estación en este archivo</translation>
    </message>
    <message>
        <source>a time of day too</source>
        <translation>también una hora del día</translation>
    </message>
    <message>
        <source>all times of a table with an offset from UTC, or none</source>
        <translation>todas las horas de una tabla con una diferencia respecto a UTC, o ninguna</translation>
    </message>
    <message>
        <source>a header and nothing below it</source>
        <translation>un encabezado y nada debajo</translation>
    </message>
    <message>
        <source>at least one row</source>
        <translation>al menos una fila</translation>
    </message>
    <message>
        <source>the kind that the map names, %1</source>
        <translation>la clase que nombra el mapa, %1</translation>
    </message>
    <message>
        <source>a column test, to keep the notes of a test in a book</source>
        <translation>una columna test, para guardar las notas de una prueba en un libro</translation>
    </message>
    <message>
        <source>the code of a catch test in the book or among these files</source>
        <translation>el código de una prueba de captación del libro o de estos archivos</translation>
    </message>
    <message>
        <source>each once in a test; row %1 says something else of it</source>
        <translation>cada uno una sola vez en una prueba; la fila %1 dice otra cosa de él</translation>
    </message>
    <message>
        <source>no such row for a test that has findings, as %1 has</source>
        <translation>ninguna fila así para una prueba que tiene hallazgos, como los tiene %1</translation>
    </message>
    <message>
        <source>hour_start and hour_end</source>
        <translation>hour_start y hour_end</translation>
    </message>
    <message>
        <source>one of the two; minutes says how long the period is</source>
        <translation>una de las dos; minutes dice cuánto dura el periodo</translation>
    </message>
    <message>
        <source>minutes from 1 to 60</source>
        <translation>minutos de 1 a 60</translation>
    </message>
    <message>
        <source>%1 hours that the book had were completed with values it did not have.</source>
        <translation>%1 horas que el libro ya tenía se completaron con valores que no tenía.</translation>
    </message>
    <message>
        <source>a time with its offset from UTC, such as 2024-06-30T13:00:00-07:00, or a column utc_offset</source>
        <translation>una hora con su diferencia respecto a UTC, como 2024-06-30T13:00:00-07:00, o una columna utc_offset</translation>
    </message>
    <message>
        <source>an offset from UTC such as -07:00, or Z</source>
        <translation>una diferencia respecto a UTC como -07:00, o Z</translation>
    </message>
    <message>
        <source>Weather station %1 is new; its place is not recorded.</source>
        <translation>La estación meteorológica %1 es nueva; su lugar no está registrado.</translation>
    </message>
    <message>
        <source>a period that shares no time with another of the station; one around %1 does</source>
        <translation>un periodo que no comparta tiempo con otro de la estación; uno hacia %1 lo comparte</translation>
    </message>
    <message>
        <source>%1 %2 to %3 %4 per %5, fixed %6, sewer %7 on %8</source>
        <translation>%1 %2 a %3 %4 por %5, fijo %6, alcantarillado %7 sobre %8</translation>
    </message>
    <message>
        <source>%1 up to %2</source>
        <translation>%1 hasta %2</translation>
    </message>
    <message>
        <source>%1 %2 to %3 %4 %5</source>
        <translation>%1 %2 a %3 %4 %5</translation>
    </message>
    <message>
        <source>%1 lift %2, pressure %3, friction %4, efficiency %5, share %6</source>
        <translation>%1 elevación %2, presión %3, fricción %4, eficiencia %5, parte %6</translation>
    </message>
    <message>
        <source>%1 %2 rate %3 (%4), arc %5, flow %6</source>
        <translation>%1 %2 tasa %3 (%4), arco %5, caudal %6</translation>
    </message>
    <message>
        <source>a day that is not before the first one</source>
        <translation>un día que no sea anterior al primero</translation>
    </message>
    <message>
        <source>a currency code of three letters, such as USD</source>
        <translation>un código de moneda de tres letras, como USD</translation>
    </message>
    <message>
        <source>a code of its own; the book has %1 as %2</source>
        <translation>un código propio; el libro tiene %1 como %2</translation>
    </message>
    <message>
        <source>zero or more</source>
        <translation>cero o más</translation>
    </message>
    <message>
        <source>a share from 0 to 1</source>
        <translation>una parte de 0 a 1</translation>
    </message>
    <message>
        <source>above zero, or empty in the last tier</source>
        <translation>mayor que cero, o vacío en el último tramo</translation>
    </message>
    <message>
        <source>a time such as 22:00</source>
        <translation>una hora como 22:00</translation>
    </message>
    <message>
        <source>days such as &quot;mon wed fri&quot;</source>
        <translation>días como «mon wed fri»</translation>
    </message>
    <message>
        <source>another time than the start</source>
        <translation>una hora distinta de la del inicio</translation>
    </message>
    <message>
        <source>dS/m of the irrigation water, 0 to 60</source>
        <translation>dS/m del agua de riego, de 0 a 60</translation>
    </message>
    <message>
        <source>dS/m the soil is kept at, 0.1 to 60</source>
        <translation>dS/m en que se mantiene el suelo, de 0.1 a 60</translation>
    </message>
    <message>
        <source>both the salt of the water and the salt the soil is kept at, or neither</source>
        <translation>tanto la sal del agua como la sal en que se mantiene el suelo, o ninguna de las dos</translation>
    </message>
    <message>
        <source>the same dates, unit and charges in every row of a rate</source>
        <translation>las mismas fechas, unidad y cargos en todas las filas de una tarifa</translation>
    </message>
    <message>
        <source>an overall efficiency from 0.01 to 1</source>
        <translation>una eficiencia total de 0.01 a 1</translation>
    </message>
    <message>
        <source>a rate above zero, or none</source>
        <translation>una tasa mayor que cero, o ninguna</translation>
    </message>
    <message>
        <source>degrees from 1 to 360</source>
        <translation>grados de 1 a 360</translation>
    </message>
    <message>
        <source>a flow above zero, or none</source>
        <translation>un caudal mayor que cero, o ninguno</translation>
    </message>
    <message>
        <source>yes, no or nothing</source>
        <translation>yes (sí), no o nada</translation>
    </message>
    <message>
        <source>register and volume</source>
        <translation>register y volume</translation>
    </message>
    <message>
        <source>either registers or volumes in one table</source>
        <translation>registros o volúmenes en una misma tabla, no ambos</translation>
    </message>
    <message>
        <source>%1: %2 readings have a date without a time; each is taken at the start of its day, 00:00 on the site&apos;s clock.</source>
        <translation>%1: %2 lecturas tienen fecha sin hora; cada una se toma al comienzo de su día, a las 00:00 del reloj del sitio.</translation>
    </message>
    <message>
        <source>an end after the start, by at most 400 days</source>
        <translation>un final posterior al inicio, en 400 días como máximo</translation>
    </message>
    <message>
        <source>a time not before meter %1 was installed (%2)</source>
        <translation>una hora no anterior a la instalación del medidor %1 (%2)</translation>
    </message>
    <message>
        <source>a time not after meter %1 was removed (%2)</source>
        <translation>una hora no posterior a la retirada del medidor %1 (%2)</translation>
    </message>
    <message>
        <source>a register of zero or more, below %1</source>
        <translation>un registro de cero o más, menor que %1</translation>
    </message>
    <message>
        <source>a register of zero or more</source>
        <translation>un registro de cero o más</translation>
    </message>
    <message>
        <source>measured, estimated or corrected</source>
        <translation>measured (medida), estimated (estimada) o corrected (corregida)</translation>
    </message>
    <message>
        <source>each code once; row %1 says something else of it</source>
        <translation>cada código una sola vez; la fila %1 dice otra cosa de él</translation>
    </message>
    <message>
        <source>one exchange of meter %1 at a time; the book has another</source>
        <translation>un solo cambio del medidor %1 a la vez; el libro tiene otro</translation>
    </message>
    <message>
        <source>Area %1: its size was given as %2, its outline measures %3 %4.</source>
        <translation>Zona %1: su superficie se dio como %2, su contorno mide %3 %4.</translation>
    </message>
    <message>
        <source>an area of the book, or a site for a new one</source>
        <translation>una zona del libro, o un sitio para una nueva</translation>
    </message>
    <message>
        <source>Catch test %1 stays out: some of its rows were refused.</source>
        <translation>La prueba de captación %1 queda fuera: se rechazaron algunas de sus filas.</translation>
    </message>
    <message>
        <source>a code of its own for this sheet; the book has another sheet of that code, and a field sheet is not overwritten</source>
        <translation>un código propio para esta hoja; el libro tiene otra hoja con ese código, y una hoja de campo no se sobrescribe</translation>
    </message>
    <message>
        <source>a file for refused rows that can be written</source>
        <translation>un archivo para filas rechazadas que se pueda escribir</translation>
    </message>
    <message>
        <source>the code of a site in the book or among these files</source>
        <translation>el código de un sitio del libro o de estos archivos</translation>
    </message>
    <message>
        <source>the code of a meter in the book or among these files</source>
        <translation>el código de un medidor del libro o de estos archivos</translation>
    </message>
    <message>
        <source>the code of an area in the book or among these files</source>
        <translation>el código de una zona del libro o de estos archivos</translation>
    </message>
    <message>
        <source>a column %1, to keep the days in a book (for hours: hour_start or hour_end, see the hourly_weather table)</source>
        <translation>una columna %1, para guardar los días en un libro (para horas: hour_start o hour_end, véase la tabla hourly_weather)</translation>
    </message>
    <message>
        <source>%1 days that the book had were completed with values it did not have.</source>
        <translation>%1 días que el libro ya tenía se completaron con valores que no tenía.</translation>
    </message>
    <message>
        <source>a key that stands twice in one object</source>
        <translation>una clave que está dos veces en un objeto</translation>
    </message>
    <message>
        <source>each key once</source>
        <translation>cada clave una sola vez</translation>
    </message>
    <message>
        <source>the end of the file</source>
        <translation>el fin del archivo</translation>
    </message>
    <message>
        <source>JSON in UTF-8</source>
        <translation>JSON en UTF-8</translation>
    </message>
    <message>
        <source>values nested more than 32 deep</source>
        <translation>valores anidados a más de 32 niveles</translation>
    </message>
    <message>
        <source>a flatter file</source>
        <translation>un archivo menos anidado</translation>
    </message>
    <message>
        <source>more than %1 values</source>
        <translation>más de %1 valores</translation>
    </message>
    <message>
        <source>more than %1 entries</source>
        <translation>más de %1 entradas</translation>
    </message>
    <message>
        <source>no readable file</source>
        <translation>ningún archivo legible</translation>
    </message>
    <message>
        <source>the path of a file</source>
        <translation>la ruta de un archivo</translation>
    </message>
    <message>
        <source>a file of more than %1 MiB</source>
        <translation>un archivo de más de %1 MiB</translation>
    </message>
    <message>
        <source>a sound file</source>
        <translation>un archivo íntegro</translation>
    </message>
    <message>
        <source>a number above zero</source>
        <translation>un número mayor que cero</translation>
    </message>
    <message>
        <source>each pressure once per nozzle</source>
        <translation>cada presión una sola vez por boquilla</translation>
    </message>
    <message>
        <source>the same operating range in every row of a nozzle</source>
        <translation>el mismo intervalo de trabajo en todas las filas de una boquilla</translation>
    </message>
    <message>
        <source>a column date: this reads daily tables</source>
        <translation>una columna date: aquí se leen tablas diarias</translation>
    </message>
    <message>
        <source>each day once; this one stands in row %1 too</source>
        <translation>cada día una sola vez; este está también en la fila %1</translation>
    </message>
    <message>
        <source>one object with &quot;evenfall_plan&quot;: 1</source>
        <translation>un objeto con &quot;evenfall_plan&quot;: 1</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objeto</translation>
    </message>
    <message>
        <source>a list of %1</source>
        <translation>una lista de %1</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>1, the version of the plan form</source>
        <translation>1, la versión de la forma de los planos</translation>
    </message>
    <message>
        <source>a key that is not known</source>
        <translation>una clave que no se conoce</translation>
    </message>
    <message>
        <source>one of the keys of the plan form</source>
        <translation>una de las claves de la forma de los planos</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot;, which is the nearest known one</source>
        <translation>la clave «%1», que es la conocida más parecida</translation>
    </message>
    <message>
        <source>a text of at most 400 bytes</source>
        <translation>un texto de 400 bytes como máximo</translation>
    </message>
    <message>
        <source>a text in quotes</source>
        <translation>un texto entre comillas</translation>
    </message>
    <message>
        <source>a list in [ ]</source>
        <translation>una lista entre [ ]</translation>
    </message>
    <message>
        <source>an object in { }</source>
        <translation>un objeto entre { }</translation>
    </message>
    <message>
        <source>the unit, such as &quot;%1&quot;</source>
        <translation>la unidad, como «%1»</translation>
    </message>
    <message>
        <source>{&quot;length&quot;: &quot;ft&quot;, &quot;flow&quot;: &quot;gpm&quot;, &quot;pressure&quot;: &quot;psi&quot;} or other units</source>
        <translation>{&quot;length&quot;: &quot;ft&quot;, &quot;flow&quot;: &quot;gpm&quot;, &quot;pressure&quot;: &quot;psi&quot;} u otras unidades</translation>
    </message>
    <message>
        <source>a point [x, y]</source>
        <translation>un punto [x, y]</translation>
    </message>
    <message>
        <source>a ring of points [[x, y], ...]</source>
        <translation>un anillo de puntos [[x, y], ...]</translation>
    </message>
    <message>
        <source>rings of points, the outer one first</source>
        <translation>anillos de puntos, primero el exterior</translation>
    </message>
    <message>
        <source>the outer ring and then its holes, [[[x, y], ...], ...]</source>
        <translation>el anillo exterior y luego sus huecos, [[[x, y], ...], ...]</translation>
    </message>
    <message>
        <source>rows [[pressure, radius, flow], ...]</source>
        <translation>filas [[presión, radio, caudal], ...]</translation>
    </message>
    <message>
        <source>a row [pressure, radius, flow]</source>
        <translation>una fila [presión, radio, caudal]</translation>
    </message>
    <message>
        <source>readings [[distance, rate], ...]</source>
        <translation>lecturas [[distancia, tasa], ...]</translation>
    </message>
    <message>
        <source>a list of heads</source>
        <translation>una lista de aspersores</translation>
    </message>
    <message>
        <source>the middle of the arc, degrees clockwise from north</source>
        <translation>el centro del arco, en grados en sentido horario desde el norte</translation>
    </message>
    <message>
        <source>a plan file of at most 128 MiB; the most heads a plan may have, 100000, take a fifth of that</source>
        <translation>un archivo de plano de 128 MiB como máximo; los aspersores que un plano puede tener, 100000, ocupan un quinto de eso</translation>
    </message>
    <message>
        <source>a code of at most 80 bytes in one line</source>
        <translation>un código de 80 bytes como máximo en una línea</translation>
    </message>
    <message>
        <source>a value above zero</source>
        <translation>un valor mayor que cero</translation>
    </message>
    <message>
        <source>a multiplier above zero</source>
        <translation>un multiplicador mayor que cero</translation>
    </message>
    <message>
        <source>degrees north from -90 to 90</source>
        <translation>grados norte de -90 a 90</translation>
    </message>
    <message>
        <source>degrees east from -180 to 180</source>
        <translation>grados este de -180 a 180</translation>
    </message>
    <message>
        <source>the elevation above sea level</source>
        <translation>la elevación sobre el nivel del mar</translation>
    </message>
    <message>
        <source>an elevation from -500 m to 9000 m</source>
        <translation>una elevación de -500 m a 9000 m</translation>
    </message>
    <message>
        <source>a power of the distance from 0.1 to 10; 2 is usual</source>
        <translation>una potencia de la distancia de 0.1 a 10; lo usual es 2</translation>
    </message>
    <message>
        <source>a coefficient from 0 to 2</source>
        <translation>un coeficiente de 0 a 2</translation>
    </message>
    <message>
        <source>a slope from 0 to 200 percent</source>
        <translation>una pendiente de 0 a 200 por ciento</translation>
    </message>
    <message>
        <source>a share from 0 to 1, such as 0.4</source>
        <translation>una parte de 0 a 1, como 0.4</translation>
    </message>
    <message>
        <source>h where a rated flow is given: the register then counts hours</source>
        <translation>h donde se da un caudal nominal: entonces el registro cuenta horas</translation>
    </message>
    <message>
        <source>a day not before the meter was installed</source>
        <translation>un día no anterior a la instalación del medidor</translation>
    </message>
    <message>
        <source>another meter than the meter itself</source>
        <translation>un medidor distinto del propio medidor</translation>
    </message>
    <message>
        <source>a code without a semicolon, which stands between the stations of a site</source>
        <translation>un código sin punto y coma, que separa las estaciones de un sitio</translation>
    </message>
    <message>
        <source>a day after the first one</source>
        <translation>un día posterior al primero</translation>
    </message>
    <message>
        <source>all temperatures of a table in one unit</source>
        <translation>todas las temperaturas de una tabla en una misma unidad</translation>
    </message>
    <message>
        <source>a temperature from -130 to 140 F; if it marks a missing value, leave the cell empty or name the mark in a map</source>
        <translation>una temperatura de -130 a 140 F; si señala un valor que falta, deje la celda vacía o nombre la señal en un mapa</translation>
    </message>
    <message>
        <source>a temperature from -90 to 60 C; if it marks a missing value, leave the cell empty or name the mark in a map</source>
        <translation>una temperatura de -90 a 60 C; si señala un valor que falta, deje la celda vacía o nombre la señal en un mapa</translation>
    </message>
    <message>
        <source>a value of zero or more; if it marks a missing value, leave the cell empty or name the mark in a map</source>
        <translation>un valor de cero o más; si señala un valor que falta, deje la celda vacía o nombre la señal en un mapa</translation>
    </message>
    <message>
        <source>a relative humidity in percent; if it marks a missing value, leave the cell empty or name the mark in a map</source>
        <translation>una humedad relativa en por ciento; si señala un valor que falta, deje la celda vacía o nombre la señal en un mapa</translation>
    </message>
    <message>
        <source>a lowest temperature not above the highest of the day</source>
        <translation>una temperatura mínima no mayor que la máxima del día</translation>
    </message>
    <message>
        <source>hours from 0 to 24; if it marks a missing value, leave the cell empty or name the mark in a map</source>
        <translation>horas de 0 a 24; si señala un valor que falta, deje la celda vacía o nombre la señal en un mapa</translation>
    </message>
    <message>
        <source>a temperature from -130 to 140 F</source>
        <translation>una temperatura de -130 a 140 F</translation>
    </message>
    <message>
        <source>a temperature from -90 to 60 C</source>
        <translation>una temperatura de -90 a 60 C</translation>
    </message>
    <message>
        <source>a lowest temperature not above the highest</source>
        <translation>una temperatura mínima no mayor que la máxima</translation>
    </message>
    <message>
        <source>a relative humidity in percent</source>
        <translation>una humedad relativa en por ciento</translation>
    </message>
    <message>
        <source>a vapour pressure from 0 to 20 kPa</source>
        <translation>una presión de vapor de 0 a 20 kPa</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>No existe el archivo o la carpeta</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>Permiso denegado</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>Error de entrada o salida</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>No queda espacio en el dispositivo</translation>
    </message>
    <message>
        <source>a value of %1 in %2</source>
        <translation>un valor de %1 en %2</translation>
    </message>
    <message>
        <source>a unit that the table has a column for: %1</source>
        <translation>una unidad para la que la tabla tenga columna: %1</translation>
    </message>
    <message>
        <source>an object { ... }</source>
        <translation>un objeto { ... }</translation>
    </message>
    <message>
        <source>an object of texts</source>
        <translation>un objeto de textos</translation>
    </message>
    <message>
        <source>a list of texts</source>
        <translation>una lista de textos</translation>
    </message>
    <message>
        <source>a key of a map file</source>
        <translation>una clave de un archivo de mapa</translation>
    </message>
    <message>
        <source>a key of a map file; the nearest is %1</source>
        <translation>una clave de un archivo de mapa; la más parecida es %1</translation>
    </message>
    <message>
        <source>iso, day_month_year, month_day_year or year_month_day</source>
        <translation>iso, day_month_year, month_day_year o year_month_day</translation>
    </message>
    <message>
        <source>the name of the column with the time</source>
        <translation>el nombre de la columna con la hora</translation>
    </message>
    <message>
        <source>register or volume</source>
        <translation>register o volume</translation>
    </message>
    <message>
        <source>a number of minutes above zero</source>
        <translation>un número de minutos mayor que cero</translation>
    </message>
    <message>
        <source>minutes with volumes, and none with registers</source>
        <translation>minutos con volúmenes, y ninguno con registros</translation>
    </message>
    <message>
        <source>at least one column and its meter</source>
        <translation>al menos una columna y su medidor</translation>
    </message>
    <message>
        <source>the column that the map names</source>
        <translation>la columna que nombra el mapa</translation>
    </message>
    <message>
        <source>the column that the map names; the nearest is %1</source>
        <translation>la columna que nombra el mapa; la más parecida es %1</translation>
    </message>
    <message>
        <source>a column that the map gives a meter or ignores</source>
        <translation>una columna a la que el mapa dé un medidor o que ignore</translation>
    </message>
    <message>
        <source>a map file of at most 1 MiB</source>
        <translation>un archivo de mapa de 1 MiB como máximo</translation>
    </message>
    <message>
        <source>1, the version of map files that this program knows</source>
        <translation>1, la versión de los archivos de mapa que conoce este programa</translation>
    </message>
    <message>
        <source>a comma, semicolon, tab or |</source>
        <translation>una coma, un punto y coma, un tabulador o |</translation>
    </message>
    <message>
        <source>a point or a comma</source>
        <translation>un punto o una coma</translation>
    </message>
    <message>
        <source>readings for a wide table</source>
        <translation>readings (lecturas) para una tabla ancha</translation>
    </message>
    <message>
        <source>wide beside columns or constants</source>
        <translation>wide junto a columns o constants</translation>
    </message>
    <message>
        <source>one of the two shapes</source>
        <translation>una de las dos formas</translation>
    </message>
    <message>
        <source>%1 not recorded</source>
        <translation>%1 sin registrar</translation>
    </message>
    <message>
        <source>its like in %1</source>
        <translation>lo de su clase en %1</translation>
    </message>
    <message>
        <source>(nothing)</source>
        <translation>(nada)</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>estimada</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corregida</translation>
    </message>
    <message>
        <source>nozzle from %1</source>
        <translation>boquilla desde %1</translation>
    </message>
    <message>
        <source>nozzle to %1</source>
        <translation>boquilla hasta %1</translation>
    </message>
    <message>
        <source>inspected</source>
        <translation>inspeccionada</translation>
    </message>
    <message>
        <source>nothing found</source>
        <translation>sin hallazgos</translation>
    </message>
    <message>
        <source>to no last day</source>
        <translation>hasta ningún último día</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>coefficient %1</source>
        <translation>coeficiente %1</translation>
    </message>
    <message>
        <source>%1 to %2 minutes after midnight</source>
        <translation>%1 a %2 minutos después de medianoche</translation>
    </message>
    <message>
        <source>%1 at once</source>
        <translation>%1 a la vez</translation>
    </message>
    <message>
        <source>off target %1 (%2)</source>
        <translation>fuera del objetivo %1 (%2)</translation>
    </message>
    <message>
        <source>special</source>
        <translation>especial</translation>
    </message>
    <message>
        <source>water %1 dS/m</source>
        <translation>agua %1 dS/m</translation>
    </message>
    <message>
        <source>soil kept at %1 dS/m</source>
        <translation>suelo mantenido en %1 dS/m</translation>
    </message>
    <message>
        <source>reading of %1 at %2</source>
        <translation>lectura de %1, %2</translation>
    </message>
    <message>
        <source>weather of %1 in the hour from %2</source>
        <translation>tiempo de %1 en la hora desde %2</translation>
    </message>
    <message>
        <source>weather of %1 on %2</source>
        <translation>tiempo de %1 el %2</translation>
    </message>
    <message>
        <source>weather station %1</source>
        <translation>estación meteorológica %1</translation>
    </message>
    <message>
        <source>site %1</source>
        <translation>sitio %1</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>medidor %1</translation>
    </message>
    <message>
        <source>area %1</source>
        <translation>zona %1</translation>
    </message>
    <message>
        <source>outline of area %1</source>
        <translation>contorno de la zona %1</translation>
    </message>
    <message>
        <source>bill of %1 from %2 to %3</source>
        <translation>factura de %1 del %2 al %3</translation>
    </message>
    <message>
        <source>pressure of test %1 at %2</source>
        <translation>presión de la prueba %1 en %2</translation>
    </message>
    <message>
        <source>findings of test %1</source>
        <translation>hallazgos de la prueba %1</translation>
    </message>
    <message>
        <source>finding %1 of test %2 at %3</source>
        <translation>hallazgo %1 de la prueba %2 en %3</translation>
    </message>
    <message>
        <source>finding %1 of test %2</source>
        <translation>hallazgo %1 de la prueba %2</translation>
    </message>
    <message>
        <source>watering rule of %1</source>
        <translation>regla de riego de %1</translation>
    </message>
    <message>
        <source>settings of %1</source>
        <translation>ajustes de %1</translation>
    </message>
    <message>
        <source>%1 of area %2 from %3</source>
        <translation>%1 de la zona %2 desde el %3</translation>
    </message>
    <message>
        <source>1 value was replaced or set aside before, and what the book has stands. To take the file&apos;s all the same, choose so for the record.</source>
        <translation>1 valor ya se había reemplazado o apartado, y vale lo que tiene el libro. Para tomar a pesar de todo el del archivo, elíjalo así para ese registro.</translation>
    </message>
    <message>
        <source>%1 values were replaced or set aside before, and what the book has stands. To take the file&apos;s all the same, choose so for the record.</source>
        <translation>%1 valores ya se habían reemplazado o apartado, y vale lo que tiene el libro. Para tomar a pesar de todo el del archivo, elíjalo así para ese registro.</translation>
    </message>
    <message>
        <source>volume of %1 in the %2 min to %3</source>
        <translation>volumen de %1 en los %2 min hasta %3</translation>
    </message>
</context>
<context>
    <name>field sheet</name>
    <message>
        <source>a number of minutes</source>
        <translation>un número de minutos</translation>
    </message>
    <message>
        <source>a number, 0 or more</source>
        <translation>un número, 0 o más</translation>
    </message>
    <message>
        <source>a pressure above 0 with its unit, such as 42 psi</source>
        <translation>una presión mayor que 0 con su unidad, como 42 psi</translation>
    </message>
    <message>
        <source>where it was measured</source>
        <translation>dónde se midió</translation>
    </message>
    <message>
        <source>no less than the lower end of the range, %1</source>
        <translation>no menos que el extremo inferior del intervalo, %1</translation>
    </message>
    <message>
        <source>one of the list</source>
        <translation>uno de la lista</translation>
    </message>
    <message>
        <source>a whole number, 1 or more</source>
        <translation>un número entero, 1 o más</translation>
    </message>
    <message>
        <source>minor, moderate or severe</source>
        <translation>leve, mediano o grave</translation>
    </message>
</context>
<context>
    <name>meter</name>
    <message>
        <source>Meter %1 had no day without use %2; on its quietest days %3 ran on, %4 in all. Look for a leak: on a day without irrigation close the isolation valves one by one and watch the meter.</source>
        <translation>El medidor %1 no tuvo ningún día sin uso %2; en sus días más tranquilos siguieron corriendo %3, %4 en total. Busque una fuga: en un día sin riego cierre las válvulas de corte una por una y observe el medidor.</translation>
    </message>
    <message>
        <source>Meter %1 never stood still for an hour %2: at least %3 at all hours</source>
        <translation>El medidor %1 no se detuvo ni una hora %2: al menos %3 a todas horas</translation>
    </message>
    <message>
        <source>%1. That is near its flow while irrigating, so irrigation round the clock is likelier than a leak; look at the programs first.</source>
        <translation>%1. Eso se acerca a su caudal de riego, así que es más probable un riego a todas horas que una fuga; mire primero los programas.</translation>
    </message>
    <message>
        <source>%1, %2 in %3 days. Look for a leak: close the isolation valves one by one and watch the meter.</source>
        <translation>%1, %2 en %3 días. Busque una fuga: cierre las válvulas de corte una por una y observe el medidor.</translation>
    </message>
    <message>
        <source>Meter %1 passed at least %2 all through the night window %3, %4 in these hours, though it stood still at other hours. Look for a station that runs unplanned or a valve that does not close.</source>
        <translation>Por el medidor %1 pasaron al menos %2 durante toda la franja nocturna %3, %4 en esas horas, aunque a otras horas se detuvo. Busque una estación que riega sin estar prevista o una válvula que no cierra.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>el %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>del %1 al %2</translation>
    </message>
    <message>
        <source>Meter %1 stood at %2 %3 over %4 readings, though the turf needed water. Check that the register turns.</source>
        <translation>El medidor %1 se quedó en %2 %3 durante %4 lecturas, aunque el césped necesitaba agua. Compruebe que el registro gira.</translation>
    </message>
    <message>
        <source>Meter %1 stood at %2 %3 over %4 readings. If water ran in this time the register is stuck.</source>
        <translation>El medidor %1 se quedó en %2 %3 durante %4 lecturas. Si en ese tiempo corrió agua, el registro está atascado.</translation>
    </message>
    <message>
        <source>never-zero days</source>
        <translation>días que nunca llegan a cero</translation>
    </message>
    <message>
        <source>overnight flow</source>
        <translation>caudal nocturno</translation>
    </message>
    <message>
        <source>use without need</source>
        <translation>uso sin necesidad</translation>
    </message>
    <message>
        <source>spike</source>
        <translation>pico</translation>
    </message>
    <message>
        <source>stuck register</source>
        <translation>registro atascado</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>hueco</translation>
    </message>
    <message>
        <source>impossible flow</source>
        <translation>caudal imposible</translation>
    </message>
    <message>
        <source>register fell</source>
        <translation>el registro bajó</translation>
    </message>
    <message>
        <source>ran backward</source>
        <translation>giró hacia atrás</translation>
    </message>
    <message>
        <source>overlapping volumes</source>
        <translation>volúmenes solapados</translation>
    </message>
    <message>
        <source>master against submeters</source>
        <translation>general frente a parciales</translation>
    </message>
    <message>
        <source>bill against readings</source>
        <translation>factura frente a lecturas</translation>
    </message>
    <message>
        <source>low</source>
        <translation>poco</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>bastante</translation>
    </message>
    <message>
        <source>high</source>
        <translation>muy</translation>
    </message>
    <message>
        <source>Meter %1 passed %2 in %3, a month in which the turf needed no water.</source>
        <translation>Por el medidor %1 pasaron %2 en %3, un mes en que el césped no necesitaba agua.</translation>
    </message>
    <message>
        <source>Meter %1 passed %2 on %3, %4 times the usual watered day around it (%5). A broken line, a hydrant or a misread register.</source>
        <translation>Por el medidor %1 pasaron %2 el %3, %4 veces lo usual en los días de riego vecinos (%5). Una tubería rota, una toma de agua o un registro mal leído.</translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation>%1 horas</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>Meter %1 has no reading for %2, from %3 to %4</source>
        <translation>El medidor %1 no tiene lecturas durante %2, de %3 a %4</translation>
    </message>
    <message>
        <source>%1; the volume in between, %2, is known but its days are not.</source>
        <translation>%1; el volumen de entremedias, %2, se conoce, pero sus días no.</translation>
    </message>
    <message>
        <source>%1; what passed in between is not known.</source>
        <translation>%1; lo que pasó entremedias no se conoce.</translation>
    </message>
    <message>
        <source>Meter %1 shows a mean flow of %2 %3; the largest normal flow of its size (%4) is %5. Check the reading, the register unit and the multiplier.</source>
        <translation>El medidor %1 muestra un caudal medio de %2 %3; el mayor caudal normal de su tamaño (%4) es %5. Compruebe la lectura, la unidad del registro y el multiplicador.</translation>
    </message>
    <message>
        <source>Meter %1 shows less at the end than at the start %2. Without the number of digits of its register this is no volume: it may have rolled over, been exchanged or been misread.</source>
        <translation>El medidor %1 muestra menos al final que al principio %2. Sin el número de cifras de su registro esto no es un volumen: pudo dar la vuelta, cambiarse o leerse mal.</translation>
    </message>
    <message>
        <source>Meter %1 ran backward by %2 %3. Water may have flowed back into the supply: have the backflow preventer tested by a licensed tester.</source>
        <translation>El medidor %1 giró hacia atrás %2 %3. Puede haber vuelto agua a la red: haga revisar el dispositivo antirretorno por un técnico autorizado.</translation>
    </message>
    <message>
        <source>Meter %1 has two volumes for the same time %2; %3 of the later one was left out.</source>
        <translation>El medidor %1 tiene dos volúmenes para el mismo tiempo %2; %3 del posterior se excluyeron.</translation>
    </message>
    <message>
        <source>Master meter %1 passed %2 more than its submeters in %3 (%4 unaccounted). A leak between them, an unmetered use or a slow submeter.</source>
        <translation>Por el medidor general %1 pasaron %2 más que por sus parciales en %3 (%4 sin explicar). Una fuga entre ellos, un uso sin medir o un medidor parcial lento.</translation>
    </message>
    <message>
        <source>The submeters of %1 passed %2 more than the master meter in %3. One of the meters, units or multipliers is wrong.</source>
        <translation>Por los medidores parciales de %1 pasaron %2 más que por el general en %3. Uno de los medidores, unidades o multiplicadores está mal.</translation>
    </message>
    <message>
        <source>The bill of meter %1 %2 says %3, the readings say %4: %5 too much was billed, or the unit differs.</source>
        <translation>La factura del medidor %1 %2 dice %3, las lecturas dicen %4: se facturaron %5 de más, o la unidad es otra.</translation>
    </message>
    <message>
        <source>The bill of meter %1 %2 says %3, the readings say %4: %5 too little was billed, or the unit differs.</source>
        <translation>La factura del medidor %1 %2 dice %3, las lecturas dicen %4: se facturaron %5 de menos, o la unidad es otra.</translation>
    </message>
    <message>
        <source>area %1</source>
        <translation>zona %1</translation>
    </message>
    <message>
        <source>a run time and a flow, to split by minutes x flow</source>
        <translation>un tiempo de riego y un caudal, para repartir por minutos × caudal</translation>
    </message>
    <message>
        <source>a size and coefficient above zero for at least one area of the meter</source>
        <translation>un tamaño y un coeficiente mayores que cero para al menos una zona del medidor</translation>
    </message>
    <message>
        <source>shares of the meter that add up to 1</source>
        <translation>partes del medidor que sumen 1</translation>
    </message>
    <message>
        <source>by the shares given</source>
        <translation>por las partes dadas</translation>
    </message>
    <message>
        <source>by area x coefficient</source>
        <translation>por área × coeficiente</translation>
    </message>
    <message>
        <source>by run time x flow</source>
        <translation>por tiempo de riego × caudal</translation>
    </message>
    <message>
        <source>linear between readings</source>
        <translation>lineal entre lecturas</translation>
    </message>
    <message>
        <source>by daily weight between readings</source>
        <translation>por pesos diarios entre lecturas</translation>
    </message>
</context>
<context>
    <name>plan</name>
    <message>
        <source>heads without an arc are taken as full circles</source>
        <translation>los aspersores sin arco se toman como de círculo completo</translation>
    </message>
    <message>
        <source>heads without a profile are taken as cones</source>
        <translation>los aspersores sin perfil se toman como conos</translation>
    </message>
    <message>
        <source>more of this kind</source>
        <translation>más de lo mismo</translation>
    </message>
    <message>
        <source>the ones above put right first</source>
        <translation>que se corrijan primero los de arriba</translation>
    </message>
    <message>
        <source>a unit of no size</source>
        <translation>una unidad sin tamaño</translation>
    </message>
    <message>
        <source>units of length and flow</source>
        <translation>unidades de longitud y de caudal</translation>
    </message>
    <message>
        <source>no outline</source>
        <translation>ningún contorno</translation>
    </message>
    <message>
        <source>at least one outline</source>
        <translation>al menos un contorno</translation>
    </message>
    <message>
        <source>no head</source>
        <translation>ningún aspersor</translation>
    </message>
    <message>
        <source>at least one head</source>
        <translation>al menos un aspersor</translation>
    </message>
    <message>
        <source>%1 heads</source>
        <translation>%1 aspersores</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>at most %1 in all outlines together</source>
        <translation>como máximo %1 en todos los contornos juntos</translation>
    </message>
    <message>
        <source>a coordinate beyond 1e12 or not a number</source>
        <translation>una coordenada de más de 1e12 o que no es un número</translation>
    </message>
    <message>
        <source>finite coordinates</source>
        <translation>coordenadas finitas</translation>
    </message>
    <message>
        <source>an outline that %1</source>
        <translation>un contorno que %1</translation>
    </message>
    <message>
        <source>a ring of at least three points that does not cross itself, then its holes</source>
        <translation>un anillo de al menos tres puntos que no se cruce consigo mismo, y después sus huecos</translation>
    </message>
    <message>
        <source>an outline %1 %2 long</source>
        <translation>un contorno de %1 %2 de largo</translation>
    </message>
    <message>
        <source>outlines far apart</source>
        <translation>contornos muy separados</translation>
    </message>
    <message>
        <source>all of them within %1 %2</source>
        <translation>todos dentro de %1 %2</translation>
    </message>
    <message>
        <source>a nozzle without a name</source>
        <translation>una boquilla sin nombre</translation>
    </message>
    <message>
        <source>a name</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>the same name twice</source>
        <translation>el mismo nombre dos veces</translation>
    </message>
    <message>
        <source>one table per nozzle</source>
        <translation>una tabla por boquilla</translation>
    </message>
    <message>
        <source>no row</source>
        <translation>ninguna fila</translation>
    </message>
    <message>
        <source>at least one row of pressure, radius and flow</source>
        <translation>al menos una fila de presión, radio y caudal</translation>
    </message>
    <message>
        <source>pressures that rise from row to row</source>
        <translation>presiones que suban de fila en fila</translation>
    </message>
    <message>
        <source>an operating range without width</source>
        <translation>un intervalo de trabajo sin amplitud</translation>
    </message>
    <message>
        <source>lowest below highest</source>
        <translation>la más baja por debajo de la más alta</translation>
    </message>
    <message>
        <source>a name of its own, not empty, cone or flat</source>
        <translation>un nombre propio, ni vacío ni cone ni flat</translation>
    </message>
    <message>
        <source>one leg per name</source>
        <translation>una medición por nombre</translation>
    </message>
    <message>
        <source>a number above zero</source>
        <translation>un número mayor que cero</translation>
    </message>
    <message>
        <source>a radius of throw of at most 1000 m</source>
        <translation>un radio de alcance de 1000 m como máximo</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>a radius, or a nozzle and a pressure</source>
        <translation>un radio, o una boquilla y una presión</translation>
    </message>
    <message>
        <source>a flow, or a nozzle and a pressure</source>
        <translation>un caudal, o una boquilla y una presión</translation>
    </message>
    <message>
        <source>the name of a table under nozzles</source>
        <translation>el nombre de una tabla de nozzles</translation>
    </message>
    <message>
        <source>the pressure at the head</source>
        <translation>la presión en el aspersor</translation>
    </message>
    <message>
        <source>a name for the head</source>
        <translation>un nombre para el aspersor</translation>
    </message>
    <message>
        <source>a name that no other head has (%1)</source>
        <translation>un nombre que no tenga ningún otro aspersor (%1)</translation>
    </message>
    <message>
        <source>degrees above 0, up to 360 for a full circle</source>
        <translation>grados por encima de 0, hasta 360 para un círculo completo</translation>
    </message>
    <message>
        <source>degrees clockwise from north, 0 to 360</source>
        <translation>grados desde el norte en el sentido del reloj, de 0 a 360</translation>
    </message>
    <message>
        <source>cone, flat or the name of a leg under profiles</source>
        <translation>cone, flat o el nombre de una medición de profiles</translation>
    </message>
    <message>
        <source>a position that is not a number</source>
        <translation>una posición que no es un número</translation>
    </message>
    <message>
        <source>finite x and y</source>
        <translation>x e y finitas</translation>
    </message>
    <message>
        <source>a position inside the outline or within 0.1 m of it</source>
        <translation>una posición dentro del contorno o a menos de 0.1 m de él</translation>
    </message>
    <message>
        <source>a path of two points or more</source>
        <translation>un trazado de dos puntos o más</translation>
    </message>
    <message>
        <source>a point that is not finite</source>
        <translation>un punto que no es finito</translation>
    </message>
    <message>
        <source>no span</source>
        <translation>ningún tramo</translation>
    </message>
    <message>
        <source>at least one length</source>
        <translation>al menos una longitud</translation>
    </message>
    <message>
        <source>a sound outline</source>
        <translation>un contorno correcto</translation>
    </message>
    <message>
        <source>a pressure above zero</source>
        <translation>una presión mayor que cero</translation>
    </message>
    <message>
        <source>a pressure that the table of nozzle %1 covers, %2 to %3 %4</source>
        <translation>una presión que abarque la tabla de la boquilla %1, de %2 a %3 %4</translation>
    </message>
    <message>
        <source>a nozzle with at least one row</source>
        <translation>una boquilla con al menos una fila</translation>
    </message>
    <message>
        <source>nozzle %1 has one row: flow by the square-root law, radius as in the row</source>
        <translation>la boquilla %1 tiene una sola fila: caudal por la ley de la raíz cuadrada, radio como en la fila</translation>
    </message>
    <message>
        <source>%1; its operating range is not stated</source>
        <translation>%1; su intervalo de trabajo no consta</translation>
    </message>
    <message>
        <source>%1 near %2</source>
        <translation>%1 cerca de %2</translation>
    </message>
    <message>
        <source>has no ring</source>
        <translation>no tiene ningún anillo</translation>
    </message>
    <message>
        <source>has a ring with fewer than three points</source>
        <translation>tiene un anillo de menos de tres puntos</translation>
    </message>
    <message>
        <source>has a point that is not finite</source>
        <translation>tiene un punto que no es finito</translation>
    </message>
    <message>
        <source>crosses itself</source>
        <translation>se cruza consigo mismo</translation>
    </message>
    <message>
        <source>has a spike</source>
        <translation>tiene un pico</translation>
    </message>
    <message>
        <source>has a ring with fewer than three different points</source>
        <translation>tiene un anillo con menos de tres puntos distintos</translation>
    </message>
    <message>
        <source>has a hole outside its outer ring</source>
        <translation>tiene un hueco fuera de su anillo exterior</translation>
    </message>
    <message>
        <source>has a hole inside a hole</source>
        <translation>tiene un hueco dentro de otro</translation>
    </message>
    <message>
        <source>has holes that cut it in two</source>
        <translation>tiene huecos que lo parten en dos</translation>
    </message>
    <message>
        <source>encloses no area</source>
        <translation>no encierra ninguna superficie</translation>
    </message>
    <message>
        <source>is not a sound outline</source>
        <translation>no es un contorno correcto</translation>
    </message>
    <message>
        <source>a window of %1</source>
        <translation>una ventana de %1</translation>
    </message>
    <message>
        <source>a share of the turf above 0, up to 1</source>
        <translation>una parte del césped mayor que 0, hasta 1</translation>
    </message>
    <message>
        <source>an outline that holds no cell centre on turf</source>
        <translation>un contorno que no contiene ningún centro de celda sobre césped</translation>
    </message>
    <message>
        <source>an outline wider than a cell, not all of it paved</source>
        <translation>un contorno más ancho que una celda y no todo pavimentado</translation>
    </message>
    <message>
        <source>sum of radial profiles on a raster, rates at cell centres</source>
        <translation>suma de perfiles radiales en una malla, tasas en los centros de las celdas</translation>
    </message>
    <message>
        <source>all heads run for the same time; low quarter is exactly a quarter of the turf; scheduling coefficient is mean over the driest square window of the stated share of the turf</source>
        <translation>todos los aspersores funcionan el mismo tiempo; el cuarto inferior es exactamente un cuarto del césped; el coeficiente de programación es la media dividida por la ventana cuadrada más seca de la parte de césped indicada</translation>
    </message>
    <message>
        <source>conservation of each head&apos;s flow; uniformity by the usual definitions on equal areas</source>
        <translation>conservación del caudal de cada aspersor; uniformidad según las definiciones habituales sobre áreas iguales</translation>
    </message>
    <message>
        <source>wind is approximate: patterns shifted and stretched as stated, not fitted to a measurement</source>
        <translation>el viento es aproximado: los patrones se desplazan y estiran como se indicó, sin ajuste a una medición</translation>
    </message>
    <message>
        <source>a pivot or traveller test</source>
        <translation>una prueba de pivote o de cañón viajero</translation>
    </message>
    <message>
        <source>a test of standing cans with x and y</source>
        <translation>una prueba de recipientes fijos con x e y</translation>
    </message>
    <message>
        <source>a test without run time</source>
        <translation>una prueba sin tiempo de riego</translation>
    </message>
    <message>
        <source>the minutes it ran</source>
        <translation>los minutos que duró</translation>
    </message>
    <message>
        <source>can %1</source>
        <translation>recipiente %1</translation>
    </message>
    <message>
        <source>its position, x and y</source>
        <translation>su posición, x e y</translation>
    </message>
    <message>
        <source>%1 of %2 cans outside the outline</source>
        <translation>%1 de %2 recipientes fuera del contorno</translation>
    </message>
    <message>
        <source>positions measured in the frame of the plan</source>
        <translation>posiciones medidas en las coordenadas del plano</translation>
    </message>
    <message>
        <source>%1 cans stand outside the outline</source>
        <translation>%1 recipientes están fuera del contorno</translation>
    </message>
    <message>
        <source>%1 cans that the plan wets</source>
        <translation>%1 recipientes que el plano moja</translation>
    </message>
    <message>
        <source>at least four</source>
        <translation>al menos cuatro</translation>
    </message>
    <message>
        <source>all heads together deliver %1 % of the design: look at pressure, run time, evaporation and the unit of the catches first</source>
        <translation>todos los aspersores juntos entregan el %1 % del diseño: mire primero la presión, el tiempo de riego, la evaporación y la unidad de lo captado</translation>
    </message>
    <message>
        <source>%1 heads in reach of the cans</source>
        <translation>%1 aspersores al alcance de los recipientes</translation>
    </message>
    <message>
        <source>at most %1: compare the part that was tested</source>
        <translation>como máximo %1: compare la parte que se probó</translation>
    </message>
    <message>
        <source>no can stands in its reach</source>
        <translation>no hay ningún recipiente a su alcance</translation>
    </message>
    <message>
        <source>the cans in its reach stand at its rim and catch almost nothing of it</source>
        <translation>los recipientes a su alcance están en su borde y casi no captan nada de él</translation>
    </message>
    <message>
        <source>%1 % of its design, give or take %2, from %3 can</source>
        <translation>%1 % de su diseño, más o menos %2, a partir de %3 recipiente</translation>
    </message>
    <message>
        <source>%1 % of its design, give or take %2, from %3 cans</source>
        <translation>%1 % de su diseño, más o menos %2, a partir de %3 recipientes</translation>
    </message>
    <message>
        <source>%1; can %2, which it should feed most, caught %3 mm where the design gives %4</source>
        <translation>%1; el recipiente %2, al que más debería alimentar, captó %3 mm donde el diseño da %4</translation>
    </message>
    <message>
        <source>the cans cannot tell it from head %1</source>
        <translation>los recipientes no lo distinguen del aspersor %1</translation>
    </message>
    <message>
        <source>too few cans, or cans that scatter too much, for a verdict</source>
        <translation>recipientes demasiado pocos o demasiado dispersos para un veredicto</translation>
    </message>
    <message>
        <source>it may be weak</source>
        <translation>puede que entregue de menos</translation>
    </message>
    <message>
        <source>it may be strong</source>
        <translation>puede que entregue de más</translation>
    </message>
    <message>
        <source>non-negative least squares for the output of each head, drawn to the common output</source>
        <translation>mínimos cuadrados no negativos para la entrega de cada aspersor, atraídos hacia la entrega común</translation>
    </message>
    <message>
        <source>low quarter is exactly a quarter of the cans; limits for weak and strong from plan_limits.csv</source>
        <translation>el cuarto inferior es exactamente un cuarto de los recipientes; los límites de menos y más vienen de plan_limits.csv</translation>
    </message>
    <message>
        <source>Lawson &amp; Hanson 1974 for the fit; derived for its errors</source>
        <translation>Lawson y Hanson 1974 para el ajuste; deducido para sus errores</translation>
    </message>
    <message>
        <source>profile %1</source>
        <translation>perfil %1</translation>
    </message>
    <message>
        <source>at least two readings of distance and rate</source>
        <translation>al menos dos lecturas de distancia y tasa</translation>
    </message>
    <message>
        <source>profile %1, distance %2</source>
        <translation>perfil %1, distancia %2</translation>
    </message>
    <message>
        <source>distances from the head that rise from reading to reading</source>
        <translation>distancias al aspersor que suban de lectura en lectura</translation>
    </message>
    <message>
        <source>profile %1, rate %2</source>
        <translation>perfil %1, tasa %2</translation>
    </message>
    <message>
        <source>a rate of zero or more</source>
        <translation>una tasa de cero o más</translation>
    </message>
    <message>
        <source>a rate above zero somewhere</source>
        <translation>una tasa mayor que cero en algún punto</translation>
    </message>
    <message>
        <source>readings that carry some water</source>
        <translation>lecturas que lleven algo de agua</translation>
    </message>
    <message>
        <source>a cell of %1 m</source>
        <translation>una celda de %1 m</translation>
    </message>
    <message>
        <source>a cell above zero and at most a quarter of the smallest radius, %1 m</source>
        <translation>una celda mayor que cero y de un cuarto del radio más pequeño como máximo, %1 m</translation>
    </message>
    <message>
        <source>a cell large enough for at most 64 million cells and 20 billion updates; this plan would take %1 million and %2 billion</source>
        <translation>una celda lo bastante grande para 64 millones de celdas y 20 000 millones de cálculos como máximo; este plano necesitaría %1 millones y %2 miles de millones</translation>
    </message>
    <message>
        <source>heads of %1 m on an outline this large</source>
        <translation>aspersores de %1 m en un contorno tan grande</translation>
    </message>
    <message>
        <source>a plan that 64 million cells and 20 billion updates can resolve; split it</source>
        <translation>un plano que quepa en 64 millones de celdas y 20 000 millones de cálculos; divídalo</translation>
    </message>
    <message>
        <source>an arc of %1 degrees on cells of %2 m</source>
        <translation>un arco de %1 grados en celdas de %2 m</translation>
    </message>
    <message>
        <source>an arc that holds at least one cell centre; take a smaller cell</source>
        <translation>un arco que contenga al menos un centro de celda; use una celda más pequeña</translation>
    </message>
    <message>
        <source>profile %1 was measured to another distance than the radius of some heads: its shape is laid on their radius</source>
        <translation>el perfil %1 se midió hasta una distancia distinta del radio de algunos aspersores: su forma se ajusta al radio de estos</translation>
    </message>
    <message>
        <source>a direction in degrees</source>
        <translation>una dirección en grados</translation>
    </message>
    <message>
        <source>a shift of %1</source>
        <translation>un desplazamiento de %1</translation>
    </message>
    <message>
        <source>a share of the radius from 0 to 1</source>
        <translation>una parte del radio de 0 a 1</translation>
    </message>
    <message>
        <source>a stretch of %1</source>
        <translation>un estiramiento de %1</translation>
    </message>
    <message>
        <source>a factor from 1 to 2</source>
        <translation>un factor de 1 a 2</translation>
    </message>
    <message>
        <source>at the new pressure, typed flows follow the square-root law and typed radii stay</source>
        <translation>a la nueva presión, los caudales escritos siguen la ley de la raíz cuadrada y los radios escritos no cambian</translation>
    </message>
</context>
<context>
    <name>reference</name>
    <message>
        <source>rotor</source>
        <translation>rotor</translation>
    </message>
    <message>
        <source>Irrigation Association 2005, five bands for rotor and impact heads: good 0.65, poor 0.50, excellent 0.80</source>
        <translation>Irrigation Association 2005, cinco niveles para rotores y aspersores de impacto: bueno 0.65, malo 0.50, excelente 0.80</translation>
    </message>
    <message>
        <source>impact head</source>
        <translation>aspersor de impacto</translation>
    </message>
    <message>
        <source>fixed spray</source>
        <translation>difusor fijo</translation>
    </message>
    <message>
        <source>Irrigation Association 2005, five bands for fixed spray: good 0.55, poor 0.40, excellent 0.75</source>
        <translation>Irrigation Association 2005, cinco niveles para difusores fijos: bueno 0.55, malo 0.40, excelente 0.75</translation>
    </message>
    <message>
        <source>drip or micro irrigation</source>
        <translation>goteo o microrriego</translation>
    </message>
    <message>
        <source>Ascough &amp; Kiker 2002, mean of field tests of micro irrigation, 72.7 %; range by common practice</source>
        <translation>Ascough y Kiker 2002, media de pruebas de campo de microrriego, 72.7 %; intervalo por práctica común</translation>
    </message>
    <message>
        <source>centre pivot</source>
        <translation>pivote central</translation>
    </message>
    <message>
        <source>Ascough &amp; Kiker 2002, mean of field tests of centre pivots, 81.4 %; range by common practice</source>
        <translation>Ascough y Kiker 2002, media de pruebas de campo de pivotes centrales, 81.4 %; intervalo por práctica común</translation>
    </message>
    <message>
        <source>solid set or hand-moved lines</source>
        <translation>cobertura fija o alas movidas a mano</translation>
    </message>
    <message>
        <source>Ascough &amp; Kiker 2002, mean of field tests of semi-permanent sprinklers, 56.9 %; range by common practice</source>
        <translation>Ascough y Kiker 2002, media de pruebas de campo de aspersores semifijos, 56.9 %; intervalo por práctica común</translation>
    </message>
    <message>
        <source>travelling gun</source>
        <translation>cañón viajero</translation>
    </message>
    <message>
        <source>DU = 100 - 1.59 (100 - CU) at the design minimum CU of 70 for travellers, USDA NRCS practice standard 442</source>
        <translation>UD = 100 − 1.59 (100 − CU) con el CU mínimo de diseño de 70 para cañones viajeros, norma de práctica 442 de USDA NRCS</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>no registrado</translation>
    </message>
    <message>
        <source>Middle of the general band (below 60 low; above 75 satisfactory) of Management Performance and Applications of Micro Irrigation Systems ch. 5: no head type was recorded</source>
        <translation>Punto medio del nivel general (menos de 60, bajo; más de 75, satisfactorio) de Management Performance and Applications of Micro Irrigation Systems, cap. 5: no se registró ningún tipo de aspersor</translation>
    </message>
    <message>
        <source>coarse sand</source>
        <translation>arena gruesa</translation>
    </message>
    <message>
        <source>UC Davis drought management, Soil characteristics table</source>
        <translation>UC Davis, gestión de sequías, tabla de características del suelo</translation>
    </message>
    <message>
        <source>medium sand</source>
        <translation>arena media</translation>
    </message>
    <message>
        <source>FAO-56 Table 19 (sand); UC Davis table</source>
        <translation>FAO-56, tabla 19 (arena); tabla de UC Davis</translation>
    </message>
    <message>
        <source>fine sand</source>
        <translation>arena fina</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>arena</translation>
    </message>
    <message>
        <source>FAO-56 Table 19; UC Davis table</source>
        <translation>FAO-56, tabla 19; tabla de UC Davis</translation>
    </message>
    <message>
        <source>loamy sand</source>
        <translation>arena franca</translation>
    </message>
    <message>
        <source>sandy loam</source>
        <translation>franco arenoso</translation>
    </message>
    <message>
        <source>fine sandy loam</source>
        <translation>franco arenoso fino</translation>
    </message>
    <message>
        <source>very fine sandy loam</source>
        <translation>franco arenoso muy fino</translation>
    </message>
    <message>
        <source>loam</source>
        <translation>franco</translation>
    </message>
    <message>
        <source>silt loam</source>
        <translation>franco limoso</translation>
    </message>
    <message>
        <source>silt</source>
        <translation>limo</translation>
    </message>
    <message>
        <source>FAO-56 Table 19</source>
        <translation>FAO-56, tabla 19</translation>
    </message>
    <message>
        <source>sandy clay loam</source>
        <translation>franco arcillo arenoso</translation>
    </message>
    <message>
        <source>clay loam</source>
        <translation>franco arcilloso</translation>
    </message>
    <message>
        <source>silty clay loam</source>
        <translation>franco arcillo limoso</translation>
    </message>
    <message>
        <source>sandy clay</source>
        <translation>arcilla arenosa</translation>
    </message>
    <message>
        <source>silty clay</source>
        <translation>arcilla limosa</translation>
    </message>
    <message>
        <source>clay</source>
        <translation>arcilla</translation>
    </message>
    <message>
        <source>cool-season turf</source>
        <translation>césped de clima fresco</translation>
    </message>
    <message>
        <source>FAO-56 Tables 12 and 22</source>
        <translation>FAO-56, tablas 12 y 22</translation>
    </message>
    <message>
        <source>warm-season turf</source>
        <translation>césped de clima cálido</translation>
    </message>
    <message>
        <source>cool-season turf, California months</source>
        <translation>césped de clima fresco, meses de California</translation>
    </message>
    <message>
        <source>FAO-56 Table 22; UC Table 1</source>
        <translation>FAO-56, tabla 22; UC, tabla 1</translation>
    </message>
    <message>
        <source>warm-season turf, California months</source>
        <translation>césped de clima cálido, meses de California</translation>
    </message>
    <message>
        <source>cool-season turf, Texas</source>
        <translation>césped de clima fresco, Texas</translation>
    </message>
    <message>
        <source>FAO-56 Table 22; Texas A&amp;M AgriLife</source>
        <translation>FAO-56, tabla 22; Texas A&amp;M AgriLife</translation>
    </message>
    <message>
        <source>warm-season turf, Texas</source>
        <translation>césped de clima cálido, Texas</translation>
    </message>
    <message>
        <source>Kentucky bluegrass</source>
        <translation>poa de los prados</translation>
    </message>
    <message>
        <source>FAO-56 Tables 12 and 22; Uddin &amp; Juraimi (2013) Table 1</source>
        <translation>FAO-56, tablas 12 y 22; Uddin y Juraimi (2013), tabla 1</translation>
    </message>
    <message>
        <source>perennial ryegrass</source>
        <translation>ballica perenne</translation>
    </message>
    <message>
        <source>FAO-56 Tables 12, 22 and 23; Uddin &amp; Juraimi (2013) rate it S, so sources disagree</source>
        <translation>FAO-56, tablas 12, 22 y 23; Uddin y Juraimi (2013) la clasifican S, así que las fuentes discrepan</translation>
    </message>
    <message>
        <source>tall fescue</source>
        <translation>festuca alta</translation>
    </message>
    <message>
        <source>FAO-56 Tables 12, 22 and 23 (slope 5.3 to 6.2)</source>
        <translation>FAO-56, tablas 12, 22 y 23 (pendiente de 5.3 a 6.2)</translation>
    </message>
    <message>
        <source>fine fescue</source>
        <translation>festuca fina</translation>
    </message>
    <message>
        <source>FAO-56 Tables 12, 22 and 23, other fescue</source>
        <translation>FAO-56, tablas 12, 22 y 23, otras festucas</translation>
    </message>
    <message>
        <source>creeping bentgrass</source>
        <translation>agrostis rastrera</translation>
    </message>
    <message>
        <source>bermudagrass</source>
        <translation>bermuda</translation>
    </message>
    <message>
        <source>FAO-56 Tables 12, 22 and 23; Uddin &amp; Juraimi (2013) rate types MT and MS</source>
        <translation>FAO-56, tablas 12, 22 y 23; Uddin y Juraimi (2013) clasifican tipos MT y MS</translation>
    </message>
    <message>
        <source>bermudagrass overseeded with rye, Phoenix, acceptable</source>
        <translation>bermuda resembrada con ballica, Phoenix, aceptable</translation>
    </message>
    <message>
        <source>FAO-56 Tables 22 and 23; AZMET</source>
        <translation>FAO-56, tablas 22 y 23; AZMET</translation>
    </message>
    <message>
        <source>bermudagrass overseeded with rye, Phoenix, high quality</source>
        <translation>bermuda resembrada con ballica, Phoenix, alta calidad</translation>
    </message>
    <message>
        <source>zoysiagrass</source>
        <translation>zoysia</translation>
    </message>
    <message>
        <source>FAO-56 Tables 12 and 22; Uddin &amp; Juraimi (2013) Table 1, Zoysia japonica</source>
        <translation>FAO-56, tablas 12 y 22; Uddin y Juraimi (2013), tabla 1, Zoysia japonica</translation>
    </message>
    <message>
        <source>St. Augustinegrass</source>
        <translation>césped San Agustín</translation>
    </message>
    <message>
        <source>seashore paspalum</source>
        <translation>paspalum marino</translation>
    </message>
    <message>
        <source>centipedegrass</source>
        <translation>césped ciempiés</translation>
    </message>
    <message>
        <source>bahiagrass</source>
        <translation>pasto bahía</translation>
    </message>
    <message>
        <source>bahiagrass, central Florida months</source>
        <translation>pasto bahía, meses del centro de Florida</translation>
    </message>
    <message>
        <source>FAO-56 Table 22; Jia, Dukes &amp; Jacobs (2009)</source>
        <translation>FAO-56, tabla 22; Jia, Dukes y Jacobs (2009)</translation>
    </message>
    <message>
        <source>buffalograss</source>
        <translation>pasto búfalo</translation>
    </message>
    <message>
        <source>plantings of high water need</source>
        <translation>plantaciones de alta necesidad de agua</translation>
    </message>
    <message>
        <source>Costello et al. (2000)</source>
        <translation>Costello et al. (2000)</translation>
    </message>
    <message>
        <source>plantings of moderate water need</source>
        <translation>plantaciones de necesidad media de agua</translation>
    </message>
    <message>
        <source>plantings of low water need</source>
        <translation>plantaciones de baja necesidad de agua</translation>
    </message>
    <message>
        <source>plantings of very low water need</source>
        <translation>plantaciones de muy baja necesidad de agua</translation>
    </message>
    <message>
        <source>FAO-56 Table 12, turf grass cool season, Kc mid (mown at 0.06 to 0.08 m)</source>
        <translation>FAO-56, tabla 12, césped de clima fresco, Kc medio (segado a 0.06 a 0.08 m)</translation>
    </message>
    <message>
        <source>FAO-56 Table 12, turf grass warm season, Kc mid</source>
        <translation>FAO-56, tabla 12, césped de clima cálido, Kc medio</translation>
    </message>
    <message>
        <source>UC Center for Landscape and Urban Horticulture, Table 1, after Meyer, Gibeault &amp; Youngner (1985) Proc. 5th Int. Turfgrass Res. Conf. 357-364</source>
        <translation>UC Center for Landscape and Urban Horticulture, tabla 1, según Meyer, Gibeault y Youngner (1985) Proc. 5th Int. Turfgrass Res. Conf. 357-364</translation>
    </message>
    <message>
        <source>Jia, Dukes &amp; Jacobs (2009) Irrigation Science 28(1):5-15, abstract</source>
        <translation>Jia, Dukes y Jacobs (2009) Irrigation Science 28(1):5-15, resumen</translation>
    </message>
    <message>
        <source>Texas A&amp;M AgriLife Extension coefficient page (archived 2009)</source>
        <translation>Texas A&amp;M AgriLife Extension, página de coeficientes (archivada en 2009)</translation>
    </message>
    <message>
        <source>AZMET Phoenix Area Turf Water Use Report; October weighted 14 days bermuda, 17 days rye</source>
        <translation>AZMET, Phoenix Area Turf Water Use Report; octubre ponderado con 14 días de bermuda y 17 de ballica</translation>
    </message>
    <message>
        <source>Costello et al. (2000) landscape coefficient method, species factor, middle of 0.7 to 0.9</source>
        <translation>Costello et al. (2000), método del coeficiente de paisaje, factor de especie, punto medio de 0.7 a 0.9</translation>
    </message>
    <message>
        <source>Costello et al. (2000) landscape coefficient method, species factor, middle of 0.4 to 0.6</source>
        <translation>Costello et al. (2000), método del coeficiente de paisaje, factor de especie, punto medio de 0.4 a 0.6</translation>
    </message>
    <message>
        <source>Costello et al. (2000) landscape coefficient method, species factor, middle of 0.1 to 0.3</source>
        <translation>Costello et al. (2000), método del coeficiente de paisaje, factor de especie, punto medio de 0.1 a 0.3</translation>
    </message>
    <message>
        <source>Costello et al. (2000) landscape coefficient method, species factor, below 0.1</source>
        <translation>Costello et al. (2000), método del coeficiente de paisaje, factor de especie, menos de 0.1</translation>
    </message>
    <message>
        <source>extension practice: managed turf roots 0.10 to 0.30 m, middle; FAO-56 Table 22 gives 0.5 to 1.0 m as the largest</source>
        <translation>práctica de extensión: raíces del césped cuidado de 0.10 a 0.30 m, punto medio; FAO-56, tabla 22, da de 0.5 a 1.0 m como máximo</translation>
    </message>
    <message>
        <source>a register that falls by no more than this part of its range ran backward; more than this is a rollover</source>
        <translation>un registro que baja no más que esta parte de su intervalo giró hacia atrás; más que eso es una vuelta completa</translation>
    </message>
    <message>
        <source>share of range</source>
        <translation>parte del intervalo</translation>
    </message>
    <message>
        <source>limit of this project</source>
        <translation>límite de este proyecto</translation>
    </message>
    <message>
        <source>longest spacing of readings that still shows the flow hour by hour (one hour and a little drift of the logger&apos;s clock)</source>
        <translation>mayor separación de lecturas que aún muestra el caudal hora a hora (una hora y un poco de deriva del reloj del registrador)</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>limit of this project; hour-by-hour record as in the never-zero rule</source>
        <translation>límite de este proyecto; registro hora a hora como en la regla de nunca a cero</translation>
    </message>
    <message>
        <source>hours of a day that must be covered before the day can be called never-zero</source>
        <translation>horas de un día que deben estar cubiertas para poder llamarlo de nunca a cero</translation>
    </message>
    <message>
        <source>h</source>
        <translation>h</translation>
    </message>
    <message>
        <source>never-zero days in a row before their flow is counted as a leak</source>
        <translation>días seguidos de nunca a cero antes de contar su caudal como fuga</translation>
    </message>
    <message>
        <source>d</source>
        <translation>d</translation>
    </message>
    <message>
        <source>never-zero days in a row for a leak to be called sure</source>
        <translation>días seguidos de nunca a cero para dar una fuga por segura</translation>
    </message>
    <message>
        <source>days in a row without a day of zero use before their lowest use is counted as a leak (records of daily readings)</source>
        <translation>días seguidos sin un día de uso cero antes de contar su uso más bajo como fuga (registros de lecturas diarias)</translation>
    </message>
    <message>
        <source>shortest spacing of readings that counts as daily (20 hours)</source>
        <translation>menor separación de lecturas que cuenta como diaria (20 horas)</translation>
    </message>
    <message>
        <source>longest spacing of readings that counts as daily (28 hours)</source>
        <translation>mayor separación de lecturas que cuenta como diaria (28 horas)</translation>
    </message>
    <message>
        <source>percentile of hourly flow that stands for the flow while irrigating</source>
        <translation>percentil del caudal por horas que representa el caudal de riego</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>por ciento</translation>
    </message>
    <message>
        <source>a lowest flow above this part of the flow while irrigating is irrigation round the clock rather than a leak</source>
        <translation>un caudal mínimo por encima de esta parte del caudal de riego es riego a todas horas y no una fuga</translation>
    </message>
    <message>
        <source>share</source>
        <translation>parte</translation>
    </message>
    <message>
        <source>start of the night window on the site&apos;s clock</source>
        <translation>comienzo de la franja nocturna en el reloj del sitio</translation>
    </message>
    <message>
        <source>common practice: lowest sustained flow between 02:00 and 04:00</source>
        <translation>práctica común: menor caudal sostenido entre las 02:00 y las 04:00</translation>
    </message>
    <message>
        <source>end of the night window</source>
        <translation>fin de la franja nocturna</translation>
    </message>
    <message>
        <source>nights in a row with flow before they are reported</source>
        <translation>noches seguidas con caudal antes de señalarlas</translation>
    </message>
    <message>
        <source>use in a month without need is reported above this part of the year&apos;s mean monthly use</source>
        <translation>el uso en un mes sin necesidad se señala por encima de esta parte del uso mensual medio del año</translation>
    </message>
    <message>
        <source>a day&apos;s use above this many times the median of the watered days around it</source>
        <translation>uso de un día por encima de tantas veces la mediana de los días de riego vecinos</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>razón</translation>
    </message>
    <message>
        <source>and above the median by this many scaled median absolute deviations</source>
        <translation>y por encima de la mediana en tantas desviaciones absolutas medianas escaladas</translation>
    </message>
    <message>
        <source>scale factor 1.4826: normal consistency of the median absolute deviation</source>
        <translation>factor de escala 1.4826: consistencia normal de la desviación absoluta mediana</translation>
    </message>
    <message>
        <source>fewer watered days around cannot tell what is usual</source>
        <translation>menos días de riego vecinos no dicen qué es lo usual</translation>
    </message>
    <message>
        <source>days on each side that the median is taken over</source>
        <translation>días a cada lado sobre los que se toma la mediana</translation>
    </message>
    <message>
        <source>register without movement for this long</source>
        <translation>registro sin movimiento durante este tiempo</translation>
    </message>
    <message>
        <source>readings that must agree before a register is called stuck</source>
        <translation>lecturas que deben coincidir para dar un registro por atascado</translation>
    </message>
    <message>
        <source>count</source>
        <translation>cuenta</translation>
    </message>
    <message>
        <source>time between readings above this many times the usual spacing around it is a gap</source>
        <translation>un tiempo entre lecturas mayor que tantas veces la separación usual vecina es un hueco</translation>
    </message>
    <message>
        <source>the usual spacing is the median of so many before or after; the longer of the two counts</source>
        <translation>la separación usual es la mediana de tantas antes o después; cuenta la mayor de las dos</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>lecturas</translation>
    </message>
    <message>
        <source>shorter gaps are not reported</source>
        <translation>los huecos más cortos no se señalan</translation>
    </message>
    <message>
        <source>unaccounted water above this part of the master meter&apos;s volume</source>
        <translation>agua sin explicar por encima de esta parte del volumen del medidor general</translation>
    </message>
    <message>
        <source>submeters above the master by more than this: more than two meters within their accuracy limits explain</source>
        <translation>medidores parciales por encima del general en más que esto: más de lo que explican dos medidores dentro de sus límites de exactitud</translation>
    </message>
    <message>
        <source>service limits 1.5 percent each, Maryland COMAR 20.70.06.04</source>
        <translation>límites de servicio del 1.5 por ciento cada uno, Maryland COMAR 20.70.06.04</translation>
    </message>
    <message>
        <source>bill and reading differ by more than this part and by more than two days&apos; mean use</source>
        <translation>factura y lectura difieren en más que esta parte y en más que el uso medio de dos días</translation>
    </message>
    <message>
        <source>mean flow above this many times the largest normal flow of the meter&apos;s size is impossible or harmful</source>
        <translation>un caudal medio por encima de tantas veces el mayor caudal normal del tamaño del medidor es imposible o dañino</translation>
    </message>
    <message>
        <source>largest normal flow from meter_sizes.csv</source>
        <translation>mayor caudal normal, de meter_sizes.csv</translation>
    </message>
    <message>
        <source>below any station record of turf growing regions; world record low -89.2 C (WMO archive)</source>
        <translation>por debajo de todo registro de estaciones en regiones con césped; récord mundial de frío −89.2 C (archivo de la OMM)</translation>
    </message>
    <message>
        <source>world record high 56.7 C, Furnace Creek 1913 (WMO archive)</source>
        <translation>récord mundial de calor 56.7 C, Furnace Creek 1913 (archivo de la OMM)</translation>
    </message>
    <message>
        <source>daily range beyond any usual station</source>
        <translation>oscilación diaria mayor que en toda estación usual</translation>
    </message>
    <message>
        <source>a night this warm is far above usual records: Fahrenheit may have been read as Celsius</source>
        <translation>una noche tan cálida está muy por encima de los registros usuales: quizá se leyó Fahrenheit como Celsius</translation>
    </message>
    <message>
        <source>FAO-56 annex 5 and ASCE-EWRI 2005 appendix D: dew point at or little above Tmin</source>
        <translation>FAO-56, anexo 5, y ASCE-EWRI 2005, apéndice D: punto de rocío igual o poco mayor que Tmin</translation>
    </message>
    <message>
        <source>FAO-56 annex 5: readings above 100 by more than 3 to 5 % call for recalibration</source>
        <translation>FAO-56, anexo 5: lecturas que pasan de 100 en más de 3 a 5 % piden recalibrar</translation>
    </message>
    <message>
        <source>FAO-56 annex 5</source>
        <translation>FAO-56, anexo 5</translation>
    </message>
    <message>
        <source>ASCE-EWRI 2005 appendix D: RHmin below 5 to 10 % even in arid places</source>
        <translation>ASCE-EWRI 2005, apéndice D: RHmin por debajo de 5 a 10 % incluso en lugares áridos</translation>
    </message>
    <message>
        <source>ASCE-EWRI 2005 appendix D: daily mean below about 30 %</source>
        <translation>ASCE-EWRI 2005, apéndice D: media diaria por debajo de un 30 %</translation>
    </message>
    <message>
        <source>FAO-56 annex 5: RHmax persistently below 80 to 90 % over irrigated ground</source>
        <translation>FAO-56, anexo 5: RHmax siempre por debajo de 80 a 90 % sobre terreno regado</translation>
    </message>
    <message>
        <source>FAO-56 annex 5 and ASCE-EWRI 2005 appendix D: 3 to 5 % above clear sky</source>
        <translation>FAO-56, anexo 5, y ASCE-EWRI 2005, apéndice D: de 3 a 5 % sobre el cielo despejado</translation>
    </message>
    <message>
        <source>FAO-56 annex 5: clear days should reach the clear-sky envelope; 5 % short calls for recalibration</source>
        <translation>FAO-56, anexo 5: los días despejados deberían alcanzar la envolvente de cielo despejado; un 5 % menos pide recalibrar</translation>
    </message>
    <message>
        <source>less than the darkest overcast lets through</source>
        <translation>menos de lo que deja pasar el cielo más cubierto</translation>
    </message>
    <message>
        <source>days in a row in which at least one clear day is expected</source>
        <translation>días seguidos en los que se espera al menos uno despejado</translation>
    </message>
    <message>
        <source>mean of a whole day above storm force</source>
        <translation>media de un día entero por encima de la fuerza de temporal</translation>
    </message>
    <message>
        <source>mean of a whole day above any station record</source>
        <translation>media de un día entero por encima de todo registro de estación</translation>
    </message>
    <message>
        <source>FAO-56 annex 5: constant low readings: failed bearing or offset</source>
        <translation>FAO-56, anexo 5: lecturas bajas constantes: rodamiento gastado o desajuste</translation>
    </message>
    <message>
        <source>run of low readings that counts as constant</source>
        <translation>serie de lecturas bajas que cuenta como constante</translation>
    </message>
    <message>
        <source>a day&apos;s rain beyond usual station records</source>
        <translation>lluvia de un día mayor que los registros usuales de estaciones</translation>
    </message>
    <message>
        <source>world record 1825 mm in 24 h, Foc-Foc 1966 (WMO archive)</source>
        <translation>récord mundial de 1825 mm en 24 h, Foc-Foc 1966 (archivo de la OMM)</translation>
    </message>
    <message>
        <source>above any daily reference ET of the standard&apos;s test sites</source>
        <translation>por encima de toda ET de referencia diaria de los sitios de prueba de la norma</translation>
    </message>
    <message>
        <source>the same reading to the last digit on this many days in a row</source>
        <translation>la misma lectura hasta la última cifra en tantos días seguidos</translation>
    </message>
    <message>
        <source>mean of Tmax over a record of a month or more; hotter than the hottest places: Fahrenheit read as Celsius</source>
        <translation>media de Tmax en un registro de un mes o más; más cálida que los lugares más cálidos: Fahrenheit leído como Celsius</translation>
    </message>
    <message>
        <source>shortest record on which the mean is judged</source>
        <translation>registro más corto en el que se juzga la media</translation>
    </message>
    <message>
        <source>Irrigation Association, run-time multiplier 1/(0.4 + 0.6 DU_LQ)</source>
        <translation>Irrigation Association, multiplicador de tiempo 1/(0.4 + 0.6 DU_LQ)</translation>
    </message>
    <message>
        <source>Irrigation Association, Landscape Irrigation Scheduling and Water Management, 2005</source>
        <translation>Irrigation Association, Landscape Irrigation Scheduling and Water Management, 2005</translation>
    </message>
    <message>
        <source>follows from a normal distribution of depths: DU_LQ = 1 - 1.271106 v, DU_LH = 1 - 0.797885 v</source>
        <translation>se deduce de una distribución normal de láminas: DU_LQ = 1 − 1.271106 v, DU_LH = 1 − 0.797885 v</translation>
    </message>
    <message>
        <source>Kc: FAO-56 Table 12; lengths: sod growing practice, no published figure</source>
        <translation>Kc: FAO-56, tabla 12; duraciones: práctica del cultivo de tepes, sin cifra publicada</translation>
    </message>
    <message>
        <source>extension practice: two to three weeks of light, frequent water; no published coefficient</source>
        <translation>práctica de extensión: dos a tres semanas de riego ligero y frecuente; sin coeficiente publicado</translation>
    </message>
    <message>
        <source>extension practice: surface kept moist through germination; no published coefficient</source>
        <translation>práctica de extensión: superficie húmeda durante la germinación; sin coeficiente publicado</translation>
    </message>
    <message>
        <source>extension practice: surface kept moist until runners root; no published coefficient</source>
        <translation>práctica de extensión: superficie húmeda hasta que enraícen los estolones; sin coeficiente publicado</translation>
    </message>
    <message>
        <source>California Code of Regulations, title 23, division 2, chapter 2.7, Model Water Efficient Landscape Ordinance, section 492.4, text of 10 September 2009, as quoted in City of Colton O-008-14; MAWA = ETo 0.62 [0.7 LA + 0.3 SLA]; target uniformity 0.65 of overhead heads from memory</source>
        <translation>Código de Reglamentos de California, título 23, división 2, capítulo 2.7, Model Water Efficient Landscape Ordinance, sección 492.4, texto del 10 de septiembre de 2009, citado en City of Colton O-008-14; MAWA = ETo 0.62 [0.7 LA + 0.3 SLA]; uniformidad objetivo 0.65 de aspersores aéreos, de memoria</translation>
    </message>
    <message>
        <source>California Code of Regulations, title 23, division 2, chapter 2.7, Model Water Efficient Landscape Ordinance, section 492.4, revised 2015; ETAF 0.8 for landscapes over one acre installed before 1 December 2015; target uniformity 0.65 of overhead heads from memory</source>
        <translation>Código de Reglamentos de California, título 23, división 2, capítulo 2.7, Model Water Efficient Landscape Ordinance, sección 492.4, revisada en 2015; ETAF 0.8 para paisajes de más de un acre instalados antes del 1 de diciembre de 2015; uniformidad objetivo 0.65 de aspersores aéreos, de memoria</translation>
    </message>
    <message>
        <source>California Code of Regulations, title 23, division 2, chapter 2.7, Model Water Efficient Landscape Ordinance, section 492.4, revised 2015; ETAF 0.45; target uniformity 0.65 of overhead heads from memory</source>
        <translation>Código de Reglamentos de California, título 23, división 2, capítulo 2.7, Model Water Efficient Landscape Ordinance, sección 492.4, revisada en 2015; ETAF 0.45; uniformidad objetivo 0.65 de aspersores aéreos, de memoria</translation>
    </message>
    <message>
        <source>California Code of Regulations, title 23, division 2, chapter 2.7, Model Water Efficient Landscape Ordinance, section 492.4, revised 2015; ETAF 0.55; target uniformity 0.65 of overhead heads from memory</source>
        <translation>Código de Reglamentos de California, título 23, división 2, capítulo 2.7, Model Water Efficient Landscape Ordinance, sección 492.4, revisada en 2015; ETAF 0.55; uniformidad objetivo 0.65 de aspersores aéreos, de memoria</translation>
    </message>
    <message>
        <source>Need divided by 0.4 + 0.6 x 0.75, the linear form of the run-time multiplier (Irrigation Association, from memory) at a low-quarter uniformity of 0.75 (above 75 % good for any sprinkler: Landscape Planning, InTech, chapter on irrigation)</source>
        <translation>Necesidad dividida por 0.4 + 0.6 × 0.75, la forma lineal del multiplicador de tiempo (Irrigation Association, de memoria) con una uniformidad del cuarto inferior de 0.75 (más del 75 % es bueno para todo aspersor: Landscape Planning, InTech, capítulo sobre riego)</translation>
    </message>
    <message>
        <source>Constructed as the plain form of a percent-of-ET allowance: copy it and set the factor of your own supplier. 0.8 is the growing-season coefficient of cool-season turf on the Texas A&amp;M AgriLife coefficient page (archived 2009)</source>
        <translation>Construido como la forma simple de una asignación en porcentaje de la ET: cópielo y ponga el factor de su propio proveedor. 0.8 es el coeficiente de la temporada de crecimiento del césped de clima fresco en la página de coeficientes de Texas A&amp;M AgriLife (archivada en 2009)</translation>
    </message>
    <message>
        <source>Invented for this project to show a utility&apos;s own rules: 85 % of reference ET less a quarter of the rain, over an efficiency of 0.8; sports fields 100 %</source>
        <translation>Inventado para este proyecto, para mostrar las reglas propias de un proveedor: 85 % de la ET de referencia menos un cuarto de la lluvia, sobre una eficiencia de 0.8; campos deportivos 100 %</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>visto</translation>
    </message>
    <message>
        <source>part</source>
        <translation>en parte</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>de memoria</translation>
    </message>
    <message>
        <source>derived</source>
        <translation>deducido</translation>
    </message>
    <message>
        <source>constructed</source>
        <translation>construido</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>práctica</translation>
    </message>
</context>
<context>
    <name>review</name>
    <message>
        <source>received</source>
        <translation>recibida</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>incompleta</translation>
    </message>
    <message>
        <source>under review</source>
        <translation>en revisión</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>aprobada</translation>
    </message>
    <message>
        <source>declined</source>
        <translation>denegada</translation>
    </message>
    <message>
        <source>paid</source>
        <translation>pagada</translation>
    </message>
    <message>
        <source>%1 (%2 asked for, at most %3)</source>
        <translation>%1 (se piden %2, como máximo %3)</translation>
    </message>
    <message>
        <source>%1, at most %2</source>
        <translation>%1, como máximo %2</translation>
    </message>
    <message>
        <source>no savings can be told</source>
        <translation>no se puede decir qué se ahorró</translation>
    </message>
    <message>
        <source>%1 x %2 per %3</source>
        <translation>%1 x %2 por %3</translation>
    </message>
    <message>
        <source>%1 per %2, %3 ac</source>
        <translation>%1 por %2, %3 ac</translation>
    </message>
    <message>
        <source>the record cannot be used: %1</source>
        <translation>el registro no se puede usar: %1</translation>
    </message>
    <message>
        <source>%1 %2 left; nothing is taken off here</source>
        <translation>quedan %1 %2; aquí no se resta nada</translation>
    </message>
    <message>
        <source>filings that agree about it</source>
        <translation>expedientes que concuerden en ello</translation>
    </message>
    <message>
        <source>meter %1, with two units or multipliers</source>
        <translation>medidor %1, con dos unidades o multiplicadores</translation>
    </message>
    <message>
        <source>weather of two stations or in two sets of units</source>
        <translation>clima de dos estaciones o en dos juegos de unidades</translation>
    </message>
    <message>
        <source>one weather record</source>
        <translation>un solo registro del clima</translation>
    </message>
    <message>
        <source>weather of %1, twice and unlike</source>
        <translation>clima del %1, dos veces y distinto</translation>
    </message>
    <message>
        <source>no filing</source>
        <translation>ningún expediente</translation>
    </message>
    <message>
        <source>at least one</source>
        <translation>al menos uno</translation>
    </message>
    <message>
        <source>filings of the sites %1 and %2</source>
        <translation>expedientes de los sitios %1 y %2</translation>
    </message>
    <message>
        <source>filings of one site</source>
        <translation>expedientes de un solo sitio</translation>
    </message>
    <message>
        <source>area %1, twice with unlike contents</source>
        <translation>zona %1, dos veces con contenido distinto</translation>
    </message>
    <message>
        <source>test %1, twice with unlike contents</source>
        <translation>prueba %1, dos veces con contenido distinto</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>JSON nested deeper than %1</source>
        <translation>JSON con más de %1 niveles</translation>
    </message>
    <message>
        <source>the few levels of a filing</source>
        <translation>los pocos niveles de un expediente</translation>
    </message>
    <message>
        <source>JSON text (RFC 8259)</source>
        <translation>texto JSON (RFC 8259)</translation>
    </message>
    <message>
        <source>JSON that is no object</source>
        <translation>JSON que no es un objeto</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objeto</translation>
    </message>
    <message>
        <source>a known member; the nearest is %1</source>
        <translation>un miembro conocido; el más parecido es %1</translation>
    </message>
    <message>
        <source>an empty text</source>
        <translation>un texto vacío</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texto</translation>
    </message>
    <message>
        <source>at most %1 bytes of text without control characters</source>
        <translation>un texto de %1 bytes como máximo, sin caracteres de control</translation>
    </message>
    <message>
        <source>a number from %1 to %2</source>
        <translation>un número de %1 a %2</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true o false</translation>
    </message>
    <message>
        <source>a date such as 2024-06-30</source>
        <translation>una fecha como 2024-06-30</translation>
    </message>
    <message>
        <source>an instant such as 2024-06-30T12:00:00Z</source>
        <translation>un instante como 2024-06-30T12:00:00Z</translation>
    </message>
    <message>
        <source>an array</source>
        <translation>una lista</translation>
    </message>
    <message>
        <source>%1 elements</source>
        <translation>%1 elementos</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como máximo %1</translation>
    </message>
    <message>
        <source>tests, %1 and %2</source>
        <translation>pruebas de captación, %1 y %2</translation>
    </message>
    <message>
        <source>tests, %1</source>
        <translation>pruebas de captación, %1</translation>
    </message>
    <message>
        <source>Tests %1 and %2 have %3 of %4 readings alike, in the same order. Was one sheet copied from the other by mistake?</source>
        <translation>Las pruebas %1 y %2 tienen %3 de %4 lecturas iguales, en el mismo orden. ¿Se copió por error una hoja de la otra?</translation>
    </message>
    <message>
        <source>Tests %1 and %2 have the same readings in another order. Was one sheet copied from the other by mistake?</source>
        <translation>Las pruebas %1 y %2 tienen las mismas lecturas en otro orden. ¿Se copió por error una hoja de la otra?</translation>
    </message>
    <message>
        <source>Every can of test %1 caught close to %2 times what it caught in test %3. Were the readings of one test worked out from the other?</source>
        <translation>Cada recipiente de la prueba %1 captó casi %2 veces lo que captó en la prueba %3. ¿Se calcularon las lecturas de una prueba a partir de la otra?</translation>
    </message>
    <message>
        <source>The last digits of %1 readings are spread more evenly than readings from a scale usually are (chi-square %2 on 9 degrees of freedom). How were the cans read?</source>
        <translation>Las últimas cifras de %1 lecturas se reparten más por igual de lo habitual al leer una escala (chi-cuadrado %2 con 9 grados de libertad). ¿Cómo se leyeron los recipientes?</translation>
    </message>
    <message>
        <source>The weather record shows %1 mm of rain on %2, the day of test %3. Did the cans catch rain?</source>
        <translation>El registro del clima muestra %1 mm de lluvia el %2, el día de la prueba %3. ¿Captaron lluvia los recipientes?</translation>
    </message>
    <message>
        <source>weather, %1</source>
        <translation>clima, %1</translation>
    </message>
    <message>
        <source>The weather record shows a mean wind of %1 m/s on %2, the day of test %3. At what hour was the test made, and how strong was the wind then?</source>
        <translation>El registro del clima muestra un viento medio de %1 m/s el %2, el día de la prueba %3. ¿A qué hora se hizo la prueba y qué viento había entonces?</translation>
    </message>
    <message>
        <source>Area %1 is given as %2, and its outline encloses %3 %4. Which one is watered?</source>
        <translation>La zona %1 se da como de %2 y su contorno encierra %3 %4. ¿Cuál de las dos se riega?</translation>
    </message>
    <message>
        <source>areas, %1</source>
        <translation>zonas, %1</translation>
    </message>
    <message>
        <source>meters, %1; tests, %2</source>
        <translation>medidores, %1; pruebas de captación, %2</translation>
    </message>
    <message>
        <source>At the rate of test %1 the volume metered in %2 takes %3 hours a day. Does the meter feed more than this area, or is the area or the rate another one?</source>
        <translation>Con la tasa de la prueba %1, el volumen medido en %2 exige %3 horas al día. ¿Alimenta el medidor algo más que esta zona, o es otra la superficie o la tasa?</translation>
    </message>
    <message>
        <source>During test %1 the meter counted %2 of rate x time x area. Was the whole area running, and for the time given?</source>
        <translation>Durante la prueba %1 el medidor contó el %2 de tasa x tiempo x superficie. ¿Funcionó toda la zona y durante el tiempo indicado?</translation>
    </message>
    <message>
        <source>Test %1 is dated %2, after the filing was written. Which date is right?</source>
        <translation>La prueba %1 tiene fecha %2, posterior a la redacción del expediente. ¿Qué fecha es la correcta?</translation>
    </message>
    <message>
        <source>Test %1 is dated %2 and counted as before the change of %3. Which date is right?</source>
        <translation>La prueba %1 tiene fecha %2 y se cuenta como anterior al cambio del %3. ¿Qué fecha es la correcta?</translation>
    </message>
    <message>
        <source>Test %1 is dated %2 and counted as after the change of %3. Which date is right?</source>
        <translation>La prueba %1 tiene fecha %2 y se cuenta como posterior al cambio del %3. ¿Qué fecha es la correcta?</translation>
    </message>
    <message>
        <source>Invoice %1 is dated %2, after the filing was written. Which date is right?</source>
        <translation>La factura %1 tiene fecha %2, posterior a la redacción del expediente. ¿Qué fecha es la correcta?</translation>
    </message>
    <message>
        <source>request.invoices, %1</source>
        <translation>facturas, %1</translation>
    </message>
    <message>
        <source>photo %1</source>
        <translation>foto %1</translation>
    </message>
    <message>
        <source>file %1</source>
        <translation>archivo %1</translation>
    </message>
    <message>
        <source>attachments, %1</source>
        <translation>adjuntos, %1</translation>
    </message>
    <message>
        <source>invoice %1</source>
        <translation>factura %1</translation>
    </message>
    <message>
        <source>invoice %1 of %2</source>
        <translation>factura %1 de %2</translation>
    </message>
    <message>
        <source>the readings of test %1</source>
        <translation>lecturas de la prueba %1</translation>
    </message>
    <message>
        <source>The same %1 also stands in filing %2. Do both applications rest on it?</source>
        <translation>Lo mismo (%1) figura también en el expediente %2. ¿Se apoyan en ello ambas solicitudes?</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>uno de %1</translation>
    </message>
    <message>
        <source>texts</source>
        <translation>textos</translation>
    </message>
    <message>
        <source>a member that the rule %1 does not have</source>
        <translation>un miembro que la regla %1 no tiene</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>the values that are accepted</source>
        <translation>los valores que se aceptan</translation>
    </message>
    <message>
        <source>the kind of attachment</source>
        <translation>el tipo de adjunto</translation>
    </message>
    <message>
        <source>a limit</source>
        <translation>un límite</translation>
    </message>
    <message>
        <source>a volume above zero</source>
        <translation>un volumen mayor que cero</translation>
    </message>
    <message>
        <source>an area above zero</source>
        <translation>una superficie mayor que cero</translation>
    </message>
    <message>
        <source>a program file of %1 bytes, %2</source>
        <translation>un archivo de programa de %1 bytes, %2</translation>
    </message>
    <message>
        <source>another form</source>
        <translation>otra forma</translation>
    </message>
    <message>
        <source>a rebate program that comes with Evenfall, one of %1, or a file ending in .json</source>
        <translation>un programa de reembolso que venga con Evenfall, uno de %1, o un archivo terminado en .json</translation>
    </message>
    <message>
        <source>our figure rounds to the one claimed</source>
        <translation>nuestra cifra se redondea a la declarada</translation>
    </message>
    <message>
        <source>the figure was cut instead of rounded</source>
        <translation>la cifra se cortó en vez de redondearse</translation>
    </message>
    <message>
        <source>the figure was rounded to the nearest %1</source>
        <translation>la cifra se redondeó al múltiplo de %1 más cercano</translation>
    </message>
    <message>
        <source>no rounding or rule that was tried leads from the raw data to the claim</source>
        <translation>ningún redondeo ni regla probados llevan de los datos originales a lo declarado</translation>
    </message>
    <message>
        <source>the unit %1 is not one of a ratio</source>
        <translation>la unidad %1 no es la de una proporción</translation>
    </message>
    <message>
        <source>typed in per cent without saying so</source>
        <translation>escrito en por ciento sin decirlo</translation>
    </message>
    <message>
        <source>the quarter rule %1 leads to it</source>
        <translation>la regla del cuarto %1 lleva a ella</translation>
    </message>
    <message>
        <source>means rounded to %1 decimals on the sheet before the ratio lead to it</source>
        <translation>las medias redondeadas a %1 decimales en la hoja antes de dividir llevan a ella</translation>
    </message>
    <message>
        <source>%1, with the quarter rule %2</source>
        <translation>%1, con la regla del cuarto %2</translation>
    </message>
    <message>
        <source>the claim follows only when the cans that the sheet leaves out are counted</source>
        <translation>lo declarado solo sale si se cuentan los recipientes que la hoja excluye</translation>
    </message>
    <message>
        <source>the filing holds no test %1</source>
        <translation>el expediente no contiene la prueba %1</translation>
    </message>
    <message>
        <source>catches of %1, quarter rule %2</source>
        <translation>lo captado el %1, regla del cuarto %2</translation>
    </message>
    <message>
        <source>no rate: the test has no run time, or the machine moves</source>
        <translation>sin tasa: la prueba no tiene tiempo de riego, o la máquina se mueve</translation>
    </message>
    <message>
        <source>the filing holds no area %1</source>
        <translation>el expediente no contiene la zona %1</translation>
    </message>
    <message>
        <source>area of the outline on the WGS 84 ellipsoid</source>
        <translation>superficie del contorno sobre el elipsoide WGS 84</translation>
    </message>
    <message>
        <source>the filing holds no outline of the area</source>
        <translation>el expediente no contiene el contorno de la zona</translation>
    </message>
    <message>
        <source>within 5 % of the outline, which is as well as one is drawn</source>
        <translation>a menos de un 5 % del contorno, que es lo que da un dibujo</translation>
    </message>
    <message>
        <source>meters and weather</source>
        <translation>medidores y clima</translation>
    </message>
    <message>
        <source>no record</source>
        <translation>sin registro</translation>
    </message>
    <message>
        <source>no savings can be told: %1</source>
        <translation>no se puede decir qué se ahorró: %1</translation>
    </message>
    <message>
        <source>inside our 90 % interval from %1 to %2</source>
        <translation>dentro de nuestro intervalo del 90 %, de %1 a %2</translation>
    </message>
    <message>
        <source>the claim is the plain difference of mean monthly use; with the weather taken out the interval is %1 to %2</source>
        <translation>lo declarado es la simple diferencia del uso mensual medio; descontado el clima, el intervalo va de %1 a %2</translation>
    </message>
    <message>
        <source>outside our 90 % interval from %1 to %2</source>
        <translation>fuera de nuestro intervalo del 90 %, de %1 a %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a plain number</source>
        <translation>«%1» no es un número simple</translation>
    </message>
    <message>
        <source>meters</source>
        <translation>medidores</translation>
    </message>
    <message>
        <source>no whole month is metered on that side of the change</source>
        <translation>ningún mes entero está medido de ese lado del cambio</translation>
    </message>
    <message>
        <source>request.invoices</source>
        <translation>facturas</translation>
    </message>
    <message>
        <source>sum of the invoices in %1</source>
        <translation>suma de las facturas en %1</translation>
    </message>
    <message>
        <source>request.devices</source>
        <translation>dispositivos</translation>
    </message>
    <message>
        <source>sum over the list of devices</source>
        <translation>suma de la lista de dispositivos</translation>
    </message>
    <message>
        <source>there is no way to recompute a claim named %1</source>
        <translation>no hay forma de recalcular una cifra llamada %1</translation>
    </message>
    <message>
        <source>areas</source>
        <translation>zonas</translation>
    </message>
    <message>
        <source>tests</source>
        <translation>pruebas de captación</translation>
    </message>
    <message>
        <source>meters; weather</source>
        <translation>medidores; clima</translation>
    </message>
    <message>
        <source>no area is filed</source>
        <translation>el expediente no trae ninguna zona</translation>
    </message>
    <message>
        <source>the areas of the site</source>
        <translation>las zonas del sitio</translation>
    </message>
    <message>
        <source>no catch test is filed</source>
        <translation>el expediente no trae ninguna prueba de captación</translation>
    </message>
    <message>
        <source>the catch tests</source>
        <translation>las pruebas de captación</translation>
    </message>
    <message>
        <source>a catch test made after the work, with every reading</source>
        <translation>una prueba de captación hecha después de la obra, con todas las lecturas</translation>
    </message>
    <message>
        <source>area %1 has no sector</source>
        <translation>la zona %1 no tiene sector</translation>
    </message>
    <message>
        <source>the sector of area %1</source>
        <translation>el sector de la zona %1</translation>
    </message>
    <message>
        <source>area %1 is of the sector %2</source>
        <translation>la zona %1 es del sector %2</translation>
    </message>
    <message>
        <source>every area is of an accepted sector</source>
        <translation>todas las zonas son de un sector aceptado</translation>
    </message>
    <message>
        <source>the areas add up to %1 ac (%2 ha)</source>
        <translation>las zonas suman %1 ac (%2 ha)</translation>
    </message>
    <message>
        <source>no meter is filed</source>
        <translation>el expediente no trae ningún medidor</translation>
    </message>
    <message>
        <source>the meters with their readings</source>
        <translation>los medidores con sus lecturas</translation>
    </message>
    <message>
        <source>meters, %1</source>
        <translation>medidores, %1</translation>
    </message>
    <message>
        <source>meter %1 has no type</source>
        <translation>el medidor %1 no tiene tipo</translation>
    </message>
    <message>
        <source>the type of meter %1</source>
        <translation>el tipo del medidor %1</translation>
    </message>
    <message>
        <source>meter %1 is of the type %2</source>
        <translation>el medidor %1 es del tipo %2</translation>
    </message>
    <message>
        <source>every meter is of an accepted type</source>
        <translation>todos los medidores son de un tipo aceptado</translation>
    </message>
    <message>
        <source>%1 attachments of the kind %2 came along; %3 are asked for</source>
        <translation>llegaron %1 adjuntos del tipo %2; se piden %3</translation>
    </message>
    <message>
        <source>attachments</source>
        <translation>adjuntos</translation>
    </message>
    <message>
        <source>%1 more: %2</source>
        <translation>%1 más: %2</translation>
    </message>
    <message>
        <source>an invoice</source>
        <translation>una factura</translation>
    </message>
    <message>
        <source>%1 invoices</source>
        <translation>%1 facturas</translation>
    </message>
    <message>
        <source>%1 invoices are listed</source>
        <translation>figuran %1 facturas</translation>
    </message>
    <message>
        <source>invoice %1 is listed and did not come along</source>
        <translation>la factura %1 figura en la lista y no llegó</translation>
    </message>
    <message>
        <source>a copy of invoice %1</source>
        <translation>una copia de la factura %1</translation>
    </message>
    <message>
        <source>%1 invoices came along</source>
        <translation>llegaron %1 facturas</translation>
    </message>
    <message>
        <source>auditor</source>
        <translation>auditor</translation>
    </message>
    <message>
        <source>no certification number is given</source>
        <translation>no se da ningún número de certificación</translation>
    </message>
    <message>
        <source>the auditor&apos;s certification number and its expiry</source>
        <translation>el número de certificación del auditor y su vencimiento</translation>
    </message>
    <message>
        <source>the expiry of the certification is not given</source>
        <translation>no se da el vencimiento de la certificación</translation>
    </message>
    <message>
        <source>the expiry of the auditor&apos;s certification</source>
        <translation>el vencimiento de la certificación del auditor</translation>
    </message>
    <message>
        <source>the certification expired on %1, before test %2 of %3</source>
        <translation>la certificación venció el %1, antes de la prueba %2 del %3</translation>
    </message>
    <message>
        <source>auditor; tests, %1</source>
        <translation>auditor; pruebas de captación, %1</translation>
    </message>
    <message>
        <source>valid until %1; all tests are earlier. The number itself is to be checked with who issued it</source>
        <translation>válida hasta el %1; todas las pruebas son anteriores. El número en sí debe comprobarse con quien lo emitió</translation>
    </message>
    <message>
        <source>%1 catch tests before the work are filed</source>
        <translation>el expediente trae %1 pruebas de captación anteriores a la obra</translation>
    </message>
    <message>
        <source>%1 catch tests after the work are filed</source>
        <translation>el expediente trae %1 pruebas de captación posteriores a la obra</translation>
    </message>
    <message>
        <source>a catch test made before the work, with every reading</source>
        <translation>una prueba de captación hecha antes de la obra, con todas las lecturas</translation>
    </message>
    <message>
        <source>test %1 cannot be analysed: %2</source>
        <translation>la prueba %1 no se puede analizar: %2</translation>
    </message>
    <message>
        <source>the full sheet of test %1</source>
        <translation>la hoja completa de la prueba %1</translation>
    </message>
    <message>
        <source>every test has as many cans</source>
        <translation>todas las pruebas tienen tantos recipientes</translation>
    </message>
    <message>
        <source>test %1 has %2 cans that count</source>
        <translation>la prueba %1 tiene %2 recipientes que cuentan</translation>
    </message>
    <message>
        <source>no test was windier</source>
        <translation>ninguna prueba tuvo más viento</translation>
    </message>
    <message>
        <source>the wind during test %1 is not recorded</source>
        <translation>el viento durante la prueba %1 no está registrado</translation>
    </message>
    <message>
        <source>the wind during test %1</source>
        <translation>el viento durante la prueba %1</translation>
    </message>
    <message>
        <source>test %1 was made in a wind of %2</source>
        <translation>la prueba %1 se hizo con un viento de %2</translation>
    </message>
    <message>
        <source>every test caught as much</source>
        <translation>todas las pruebas captaron tanto</translation>
    </message>
    <message>
        <source>test %1 caught %2 mm on average</source>
        <translation>la prueba %1 captó %2 mm de media</translation>
    </message>
    <message>
        <source>no catch test after the work is filed</source>
        <translation>el expediente no trae ninguna prueba de captación posterior a la obra</translation>
    </message>
    <message>
        <source>the newest test after the work is of %1, %2 days before the filing</source>
        <translation>la prueba más reciente después de la obra es del %1, %2 días antes del expediente</translation>
    </message>
    <message>
        <source>test %1 gives %2</source>
        <translation>la prueba %1 da %2</translation>
    </message>
    <message>
        <source>%1, quarter rule %2</source>
        <translation>%1, regla del cuarto %2</translation>
    </message>
    <message>
        <source>%1; probability of reaching the threshold %2 %, %3 % asked for</source>
        <translation>%1; probabilidad de alcanzar el umbral, %2 %; se pide el %3 %</translation>
    </message>
    <message>
        <source>%1; no probability can be told from several areas or readings all alike</source>
        <translation>%1; de varias zonas o de lecturas todas iguales no sale ninguna probabilidad</translation>
    </message>
    <message>
        <source>one area per filing, or more cans</source>
        <translation>una zona por expediente, o más recipientes</translation>
    </message>
    <message>
        <source>a test with more cans</source>
        <translation>una prueba con más recipientes</translation>
    </message>
    <message>
        <source>tests on both sides of the work are needed</source>
        <translation>hacen falta pruebas de antes y de después de la obra</translation>
    </message>
    <message>
        <source>catch tests made before and after the work, with every reading</source>
        <translation>pruebas de captación hechas antes y después de la obra, con todas las lecturas</translation>
    </message>
    <message>
        <source>before: %1; after: %2</source>
        <translation>antes: %1; después: %2</translation>
    </message>
    <message>
        <source>meter readings and weather for a full year before the work and for the months after it</source>
        <translation>lecturas del medidor y clima de un año entero antes de la obra y de los meses posteriores</translation>
    </message>
    <message>
        <source>saved %1 %, 90 % interval %2 to %3 %</source>
        <translation>ahorrado %1 %, intervalo del 90 % de %2 a %3 %</translation>
    </message>
    <message>
        <source>readings of more months after the work</source>
        <translation>lecturas de más meses posteriores a la obra</translation>
    </message>
    <message>
        <source>claims</source>
        <translation>cifras declaradas</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>these do not follow from the raw data: %1</source>
        <translation>estas no salen de los datos originales: %1</translation>
    </message>
    <message>
        <source>these cannot be recomputed: %1</source>
        <translation>estas no se pueden recalcular: %1</translation>
    </message>
    <message>
        <source>the raw data behind %1</source>
        <translation>los datos originales de %1</translation>
    </message>
    <message>
        <source>nothing is claimed</source>
        <translation>no se declara nada</translation>
    </message>
    <message>
        <source>all %1 figures follow from the raw data</source>
        <translation>las %1 cifras salen de los datos originales</translation>
    </message>
    <message>
        <source>signed by the key %1; whose key that is, is for the officer to find out</source>
        <translation>firmado con la clave %1; de quién es esa clave debe averiguarlo quien revisa</translation>
    </message>
    <message>
        <source>signature</source>
        <translation>firma</translation>
    </message>
    <message>
        <source>the filing is not signed</source>
        <translation>el expediente no está firmado</translation>
    </message>
    <message>
        <source>the filing again, signed by the auditor</source>
        <translation>el expediente otra vez, firmado por el auditor</translation>
    </message>
    <message>
        <source>a spell of %1 days</source>
        <translation>un período de %1 días</translation>
    </message>
    <message>
        <source>a length above zero, and finite use and need</source>
        <translation>una duración mayor que cero, y uso y necesidad finitos</translation>
    </message>
    <message>
        <source>%1 spells before the change</source>
        <translation>%1 períodos antes del cambio</translation>
    </message>
    <message>
        <source>at least three on either side of a change point</source>
        <translation>al menos tres a cada lado de un punto de cambio</translation>
    </message>
    <message>
        <source>use per day on net ET need per day, %1, fitted by least squares before the change; CV(RMSE) over %2; %3 % interval of the summed saving from the least-squares variance</source>
        <translation>uso por día según la necesidad neta de ET por día, %1, ajuste por mínimos cuadrados antes del cambio; CV(RMSE) sobre %2; intervalo del %3 % del ahorro sumado según la varianza de los mínimos cuadrados</translation>
    </message>
    <message>
        <source>%1, residuals not positively autocorrelated</source>
        <translation>%1, residuos sin autocorrelación positiva</translation>
    </message>
    <message>
        <source>%1, widened for a lag-1 autocorrelation of %2 (corrected for few spells)</source>
        <translation>%1, ampliado por una autocorrelación de retardo 1 de %2 (corregida por ser pocos los períodos)</translation>
    </message>
    <message>
        <source>no spell after the change</source>
        <translation>ningún período después del cambio</translation>
    </message>
    <message>
        <source>more than the %1 coefficients of the baseline</source>
        <translation>más que los %1 coeficientes de la línea base</translation>
    </message>
    <message>
        <source>%1 metered spells before the change; at least %2 are needed</source>
        <translation>%1 períodos medidos antes del cambio; hacen falta al menos %2</translation>
    </message>
    <message>
        <source>%1 days metered before the change; at least %2 are needed</source>
        <translation>%1 días medidos antes del cambio; hacen falta al menos %2</translation>
    </message>
    <message>
        <source>%1 metered spells after the change; at least %2 are needed</source>
        <translation>%1 períodos medidos después del cambio; hacen falta al menos %2</translation>
    </message>
    <message>
        <source>%1 days metered after the change; at least %2 are needed</source>
        <translation>%1 días medidos después del cambio; hacen falta al menos %2</translation>
    </message>
    <message>
        <source>the need of the turf explains only %1 % of how use varied before the change; at least %2 % is asked for</source>
        <translation>la necesidad del césped explica solo el %1 % de la variación del uso antes del cambio; se pide al menos el %2 %</translation>
    </message>
    <message>
        <source>use before the change scatters by %1 % about the baseline (CV(RMSE), %2); at most %3 % is accepted</source>
        <translation>el uso antes del cambio se dispersa un %1 % en torno a la línea base (CV(RMSE), %2); se acepta el %3 % como máximo</translation>
    </message>
    <message>
        <source>use before the change did not rise with the need of the turf, so the weather cannot be taken out</source>
        <translation>el uso antes del cambio no subió con la necesidad del césped, así que el clima no se puede descontar</translation>
    </message>
    <message>
        <source>%1 of %2 spells after the change had a need outside the range seen before it: the baseline is stretched there</source>
        <translation>%1 de %2 períodos posteriores al cambio tuvieron una necesidad fuera del intervalo anterior: ahí la línea base se extrapola</translation>
    </message>
    <message>
        <source>the baseline expects no use after the change</source>
        <translation>la línea base no espera ningún uso después del cambio</translation>
    </message>
    <message>
        <source>no baseline can be fitted: %1</source>
        <translation>no se puede ajustar ninguna línea base: %1</translation>
    </message>
    <message>
        <source>straight line with intercept</source>
        <translation>recta con ordenada en el origen</translation>
    </message>
    <message>
        <source>line with a change point</source>
        <translation>línea con un punto de cambio</translation>
    </message>
    <message>
        <source>straight or with a change point, whichever the Bayesian information criterion prefers</source>
        <translation>recta o con un punto de cambio, según prefiera el criterio de información bayesiano</translation>
    </message>
    <message>
        <source>the elevation of the weather station is not recorded; sea level is assumed where reference ET is computed</source>
        <translation>la altitud de la estación meteorológica no está registrada; se supone el nivel del mar donde se calcula la ET de referencia</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>the filing does not say when the change was made</source>
        <translation>el expediente no dice cuándo se hizo el cambio</translation>
    </message>
    <message>
        <source>the filing holds no weather record</source>
        <translation>el expediente no contiene ningún registro del clima</translation>
    </message>
    <message>
        <source>effective rain by the monthly NRCS form: a daily balance needs the soil at every can</source>
        <translation>lluvia efectiva con la fórmula mensual del NRCS: un balance diario necesita el suelo de cada recipiente</translation>
    </message>
    <message>
        <source>%1 months were left out: not metered on every day, without enough weather, or holding the change</source>
        <translation>se excluyeron %1 meses: no medidos todos los días, sin bastante clima o con el cambio dentro</translation>
    </message>
    <message>
        <source>%1; effective rain %2; whole months, meters linear between readings</source>
        <translation>%1; lluvia efectiva %2; meses enteros, medidores lineales entre lecturas</translation>
    </message>
</context>
<context>
    <name>schedule</name>
    <message>
        <source>watering rule of site %1</source>
        <translation>regla de riego del sitio %1</translation>
    </message>
    <message>
        <source>at least one day, a window and one station at a time or more</source>
        <translation>al menos un día, un horario y una estación a la vez o más</translation>
    </message>
    <message>
        <source>station %1 twice</source>
        <translation>estación %1 dos veces</translation>
    </message>
    <message>
        <source>each station once</source>
        <translation>cada estación una vez</translation>
    </message>
    <message>
        <source>area %1</source>
        <translation>zona %1</translation>
    </message>
    <message>
        <source>the same months for every area, at least one</source>
        <translation>los mismos meses para cada zona, al menos uno</translation>
    </message>
    <message>
        <source>soil figures above zero</source>
        <translation>cifras del suelo mayores que cero</translation>
    </message>
    <message>
        <source>%1, at an arc of %2 degrees</source>
        <translation>%1, con un arco de %2 grados</translation>
    </message>
    <message>
        <source>its area %1 has no need known</source>
        <translation>la necesidad de su zona %1 no se conoce</translation>
    </message>
    <message>
        <source>no application rate: test it or enter its rate</source>
        <translation>sin tasa de aplicación: pruébela o introdúzcala</translation>
    </message>
    <message>
        <source>no station</source>
        <translation>sin estación</translation>
    </message>
    <message>
        <source>week net x run-time multiplier / rate of the station; days by p x available water over ET of a day; cycles by allowable surface accumulation; whole minutes, up</source>
        <translation>neta semanal × multiplicador de tiempo ÷ tasa de la estación; días por p × agua disponible sobre ET de un día; ciclos por la acumulación superficial admisible; minutos enteros, hacia arriba</translation>
    </message>
    <message>
        <source>FAO-56 Eq. 82 and 83; trade formula for cycles (memory)</source>
        <translation>FAO-56 ec. 82 y 83; fórmula del oficio para los ciclos (de memoria)</translation>
    </message>
    <message>
        <source>area %1: a soil figure is assumed, see the notes of the season</source>
        <translation>zona %1: una cifra del suelo es supuesta, vea las notas de la temporada</translation>
    </message>
    <message>
        <source>no watering rule: every day is allowed and no window is kept</source>
        <translation>sin regla de riego: se permite todos los días y no hay horario</translation>
    </message>
    <message>
        <source>%1 min at %2 mm/h, intake %3 mm/h</source>
        <translation>%1 min a %2 mm/h, infiltración %3 mm/h</translation>
    </message>
    <message>
        <source>a run of zero or more, and rates and accumulation above zero</source>
        <translation>un riego de cero o más, y tasas y acumulación mayores que cero</translation>
    </message>
    <message>
        <source>one station at a time or more</source>
        <translation>una estación a la vez o más</translation>
    </message>
    <message>
        <source>site %1 has no watering rule</source>
        <translation>el sitio %1 no tiene regla de riego</translation>
    </message>
    <message>
        <source>days and a window, to know when a run starts</source>
        <translation>días y un horario, para saber cuándo empieza un riego</translation>
    </message>
</context>
<context>
    <name>site</name>
    <message>
        <source>a latitude from -90 to 90 and a longitude from -180 to 180 degrees</source>
        <translation>una latitud de -90 a 90 y una longitud de -180 a 180 grados</translation>
    </message>
    <message>
        <source>a length as a number in the shape &quot;%1&quot;</source>
        <translation>una longitud como número en la figura «%1»</translation>
    </message>
    <message>
        <source>three sides that make a triangle</source>
        <translation>tres lados que formen un triángulo</translation>
    </message>
    <message>
        <source>lengths above zero</source>
        <translation>longitudes mayores que cero</translation>
    </message>
    <message>
        <source>rectangle and two sides: rectangle 120 45</source>
        <translation>rectangle y dos lados: rectangle 120 45</translation>
    </message>
    <message>
        <source>triangle and three sides: triangle 30 40 50</source>
        <translation>triangle y tres lados: triangle 30 40 50</translation>
    </message>
    <message>
        <source>circle and its radius: circle 12</source>
        <translation>circle y su radio: circle 12</translation>
    </message>
    <message>
        <source>trapezoid, its parallel sides and their distance: trapezoid 30 20 15</source>
        <translation>trapezoid, sus lados paralelos y la distancia entre ellos: trapezoid 30 20 15</translation>
    </message>
    <message>
        <source>offsets, their spacing and at least two of them: offsets 10: 0 12 15 9 0</source>
        <translation>offsets, su separación y al menos dos de ellos: offsets 10: 0 12 15 9 0</translation>
    </message>
    <message>
        <source>offsets of zero or more, on one side of the baseline</source>
        <translation>desplazamientos de cero o más, a un lado de la línea base</translation>
    </message>
    <message>
        <source>rectangle, triangle, circle, trapezoid or offsets</source>
        <translation>rectangle, triangle, circle, trapezoid u offsets</translation>
    </message>
    <message>
        <source>%1 corners</source>
        <translation>%1 esquinas</translation>
    </message>
    <message>
        <source>a ring of at least three corners</source>
        <translation>un anillo de al menos tres esquinas</translation>
    </message>
    <message>
        <source>shapes that leave an area above zero</source>
        <translation>figuras que dejen un área mayor que cero</translation>
    </message>
    <message>
        <source>longitude and latitude in degrees</source>
        <translation>longitud y latitud en grados</translation>
    </message>
</context>
<context>
    <name>stats</name>
    <message>
        <source>BCa bootstrap</source>
        <translation>bootstrap BCa</translation>
    </message>
    <message>
        <source>percentile bootstrap</source>
        <translation>bootstrap de percentiles</translation>
    </message>
    <message>
        <source>BCa bootstrap, widened for few values</source>
        <translation>bootstrap BCa, ampliado por haber pocos valores</translation>
    </message>
    <message>
        <source>no spread in the resamples</source>
        <translation>sin dispersión en los remuestreos</translation>
    </message>
    <message>
        <source>observation %1 of a regression</source>
        <translation>observación %1 de una regresión</translation>
    </message>
    <message>
        <source>a finite number</source>
        <translation>un número finito</translation>
    </message>
    <message>
        <source>%1 explanatory values</source>
        <translation>%1 valores explicativos</translation>
    </message>
    <message>
        <source>as many as observations, %1</source>
        <translation>tantos como observaciones, %1</translation>
    </message>
    <message>
        <source>%1 observations</source>
        <translation>%1 observaciones</translation>
    </message>
    <message>
        <source>more than the %1 coefficients of the model</source>
        <translation>más que los %1 coeficientes del modelo</translation>
    </message>
    <message>
        <source>an explanatory variable that is always 0</source>
        <translation>una variable explicativa que siempre es 0</translation>
    </message>
    <message>
        <source>one that varies</source>
        <translation>una que varíe</translation>
    </message>
    <message>
        <source>an explanatory variable that follows from the others</source>
        <translation>una variable explicativa que se deduce de las demás</translation>
    </message>
    <message>
        <source>variables that vary independently</source>
        <translation>variables que varíen por separado</translation>
    </message>
</context>
<context>
    <name>store</name>
    <message>
        <source>There is no filing %1 in the book.</source>
        <translation>No hay ningún expediente %1 en el libro.</translation>
    </message>
    <message>
        <source>The application %1 has no status.</source>
        <translation>La solicitud %1 no tiene estado.</translation>
    </message>
    <message>
        <source>There is an application %1 in the book already.</source>
        <translation>Ya hay una solicitud %1 en el libro.</translation>
    </message>
    <message>
        <source>There is no application %1 in the book.</source>
        <translation>No hay ninguna solicitud %1 en el libro.</translation>
    </message>
    <message>
        <source>Application %1 is %2; it cannot become %3 from there.</source>
        <translation>La solicitud %1 está en «%2»; de ahí no puede pasar a «%3».</translation>
    </message>
    <message>
        <source>The filing %1 is no filing of application %2.</source>
        <translation>El expediente %1 no es de la solicitud %2.</translation>
    </message>
    <message>
        <source>A bill of meter %1 has no days that can be read.</source>
        <translation>Una factura del medidor %1 no tiene días que se puedan leer.</translation>
    </message>
    <message>
        <source>The book %1 could not be opened for reading.</source>
        <translation>El libro %1 no se pudo abrir para leerlo.</translation>
    </message>
    <message>
        <source>The file %1 is not an Evenfall book.</source>
        <translation>El archivo %1 no es un libro de Evenfall.</translation>
    </message>
    <message>
        <source>The file %1 is a database, but not an Evenfall book.</source>
        <translation>El archivo %1 es una base de datos, pero no un libro de Evenfall.</translation>
    </message>
    <message>
        <source>The book %1 was written by a newer Evenfall (book version %2; this program knows up to %3). Use that program, or a newer one.</source>
        <translation>El libro %1 se escribió con un Evenfall más nuevo (versión de libro %2; este programa conoce hasta la %3). Use ese programa o uno más nuevo.</translation>
    </message>
    <message>
        <source>The file %1 exists already; a new book needs a new name.</source>
        <translation>El archivo %1 ya existe; un libro nuevo necesita un nombre nuevo.</translation>
    </message>
    <message>
        <source>The book %1 could not be made: %2.</source>
        <translation>El libro %1 no se pudo crear: %2.</translation>
    </message>
    <message>
        <source>There is no book %1.</source>
        <translation>No existe el libro %1.</translation>
    </message>
    <message>
        <source>The book %1 is of an earlier version; open it once for writing to bring it up to date.</source>
        <translation>El libro %1 es de una versión anterior; ábralo una vez para escritura y se actualizará.</translation>
    </message>
    <message>
        <source>The book %1 does not have the tables an Evenfall book has; it was changed by another program.</source>
        <translation>El libro %1 no tiene las tablas de un libro de Evenfall; otro programa lo cambió.</translation>
    </message>
    <message>
        <source>The book %1 could not be opened: %2.</source>
        <translation>El libro %1 no se pudo abrir: %2.</translation>
    </message>
    <message>
        <source>a row of %1 points at a missing row of %2</source>
        <translation>una fila de %1 señala una fila de %2 que falta</translation>
    </message>
    <message>
        <source>application</source>
        <translation>solicitud</translation>
    </message>
    <message>
        <source>area</source>
        <translation>zona</translation>
    </message>
    <message>
        <source>catch_test</source>
        <translation>prueba de captación</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>medidor</translation>
    </message>
    <message>
        <source>site</source>
        <translation>sitio</translation>
    </message>
    <message>
        <source>weather_station</source>
        <translation>estación meteorológica</translation>
    </message>
    <message>
        <source>The book %1 has no %2 &quot;%3&quot;.</source>
        <translation>En el libro %1 no hay %2 «%3».</translation>
    </message>
    <message>
        <source>Meter %1 has no readings.</source>
        <translation>El medidor %1 no tiene lecturas.</translation>
    </message>
    <message>
        <source>Meter %1 has a reading on %2, before it was installed on %3.</source>
        <translation>El medidor %1 tiene una lectura el %2, antes de que se instalara el %3.</translation>
    </message>
    <message>
        <source>Meter %1 has a reading on %2, after it was removed on %3.</source>
        <translation>El medidor %1 tiene una lectura el %2, después de que se retirara el %3.</translation>
    </message>
    <message>
        <source>Meter %1 stands upstream of itself by way of its parents.</source>
        <translation>El medidor %1 queda aguas arriba de sí mismo a través de los medidores que tiene por encima.</translation>
    </message>
    <message>
        <source>The shares of meter %1 add up to %2, more than the whole.</source>
        <translation>Las partes del medidor %1 suman %2, más que el total.</translation>
    </message>
    <message>
        <source>On %1 station %2 has a lowest temperature above the highest.</source>
        <translation>El %1 la estación %2 tiene una temperatura mínima mayor que la máxima.</translation>
    </message>
    <message>
        <source>Station %1 lacks 1 day after %2.</source>
        <translation>A la estación %1 le falta 1 día después del %2.</translation>
    </message>
    <message>
        <source>Station %1 lacks %2 days after %3.</source>
        <translation>A la estación %1 le faltan %2 días después del %3.</translation>
    </message>
    <message>
        <source>Site %1 mixes weather stations by distance and has no longitude.</source>
        <translation>El sitio %1 combina estaciones meteorológicas por distancia y no tiene longitud.</translation>
    </message>
    <message>
        <source>Site %1 names weather station %2, which has no days in the book.</source>
        <translation>El sitio %1 nombra la estación meteorológica %2, que no tiene días en el libro.</translation>
    </message>
    <message>
        <source>Site %1 mixes weather station %2 by distance, whose place is not recorded.</source>
        <translation>El sitio %1 combina por distancia la estación meteorológica %2, cuyo lugar no está registrado.</translation>
    </message>
    <message>
        <source>The catch test %1 has no date that can be read.</source>
        <translation>La prueba de captación %1 no tiene fecha que se pueda leer.</translation>
    </message>
    <message>
        <source>attempt to write a readonly database</source>
        <translation>se intentó escribir en una base de datos de solo lectura</translation>
    </message>
    <message>
        <source>database disk image is malformed</source>
        <translation>la base de datos está dañada</translation>
    </message>
    <message>
        <source>database is locked</source>
        <translation>la base de datos está bloqueada por otro programa</translation>
    </message>
    <message>
        <source>database or disk is full</source>
        <translation>la base de datos o el disco están llenos</translation>
    </message>
    <message>
        <source>database table is locked</source>
        <translation>una tabla de la base de datos está bloqueada</translation>
    </message>
    <message>
        <source>disk I/O error</source>
        <translation>error de entrada o salida del disco</translation>
    </message>
    <message>
        <source>file is not a database</source>
        <translation>el archivo no es una base de datos</translation>
    </message>
    <message>
        <source>out of memory</source>
        <translation>falta memoria</translation>
    </message>
    <message>
        <source>unable to open database file</source>
        <translation>no se puede abrir el archivo de la base de datos</translation>
    </message>
    <message>
        <source>The book %1 could not be used: %2.</source>
        <translation>El libro %1 no se pudo usar: %2.</translation>
    </message>
    <message>
        <source>The filing %1 is in the book already, under the name %2.</source>
        <translation>El expediente %1 ya está en el libro, con el nombre %2.</translation>
    </message>
    <message>
        <source>The weather of station %1 was typed in more than one set of units from %2 to %3; a filing holds one. The units change on %4.</source>
        <translation>El tiempo de la estación %1 se escribió en más de un juego de unidades del %2 al %3; un expediente admite uno. Las unidades cambian el %4.</translation>
    </message>
    <message>
        <source>The book could not be written: %1.</source>
        <translation>El libro no se pudo escribir: %1.</translation>
    </message>
    <message>
        <source>The book %1 could not be read: %2.</source>
        <translation>El libro %1 no se pudo leer: %2.</translation>
    </message>
    <message>
        <source>The plan %1 belongs to another site; take another code.</source>
        <translation>El plano %1 pertenece a otro sitio; tome otro código.</translation>
    </message>
    <message>
        <source>A planting of area %1 has no days that can be read.</source>
        <translation>Una plantación de la zona %1 no tiene días que se puedan leer.</translation>
    </message>
    <message>
        <source>The book holds a date that cannot be read: %1.</source>
        <translation>El libro contiene una fecha que no se puede leer: %1.</translation>
    </message>
    <message>
        <source>The book %1 could not be written: %2. Nothing of this import was kept.</source>
        <translation>El libro %1 no se pudo escribir: %2. No se guardó nada de esta importación.</translation>
    </message>
    <message>
        <source>A weather record has no set of units; the book is damaged.</source>
        <translation>Un registro meteorológico no tiene juego de unidades; el libro está dañado.</translation>
    </message>
    <message>
        <source>A weather day of station %1 has no date that can be read.</source>
        <translation>Un día meteorológico de la estación %1 no tiene fecha que se pueda leer.</translation>
    </message>
    <message>
        <source>The list of conflicts could not be kept: %1.</source>
        <translation>No se pudo guardar la lista de conflictos: %1.</translation>
    </message>
    <message>
        <source>The list of conflicts lost a row.</source>
        <translation>La lista de conflictos perdió una fila.</translation>
    </message>
</context>
<context>
    <name>units</name>
    <message>
        <source>one of the units %1</source>
        <translation>una de las unidades %1</translation>
    </message>
    <message>
        <source>a number and a unit (%1), such as 12.5%2</source>
        <translation>un número y una unidad (%1), como 12.5%2</translation>
    </message>
    <message>
        <source>a finite value for %1 from %2 to %3</source>
        <translation>un valor finito para %1 de %2 a %3</translation>
    </message>
    <message>
        <source>a finite value for %1</source>
        <translation>un valor finito para %1</translation>
    </message>
    <message>
        <source>low-quarter distribution uniformity</source>
        <translation>la uniformidad de distribución del cuarto inferior</translation>
    </message>
    <message>
        <source>low-half distribution uniformity</source>
        <translation>la uniformidad de distribución de la mitad inferior</translation>
    </message>
    <message>
        <source>Christiansen coefficient</source>
        <translation>el coeficiente de Christiansen</translation>
    </message>
    <message>
        <source>coefficient of variation</source>
        <translation>el coeficiente de variación</translation>
    </message>
    <message>
        <source>statistical uniformity</source>
        <translation>la uniformidad estadística</translation>
    </message>
    <message>
        <source>irrigation efficiency</source>
        <translation>la eficiencia de riego</translation>
    </message>
    <message>
        <source>landscape coefficient</source>
        <translation>el coeficiente de paisaje</translation>
    </message>
    <message>
        <source>run-time multiplier</source>
        <translation>el multiplicador de tiempo</translation>
    </message>
    <message>
        <source>scheduling coefficient</source>
        <translation>el coeficiente de programación</translation>
    </message>
    <message>
        <source>share</source>
        <translation>la parte</translation>
    </message>
</context>
<context>
    <name>weather</name>
    <message>
        <source>one of %1</source>
        <translation>uno de: %1</translation>
    </message>
    <message>
        <source>a coefficient from 0 to 2</source>
        <translation>un coeficiente de 0 a 2</translation>
    </message>
    <message>
        <source>establishment of new turf</source>
        <translation>establecimiento de césped nuevo</translation>
    </message>
    <message>
        <source>sod growth stage</source>
        <translation>fase de crecimiento del tepe</translation>
    </message>
    <message>
        <source>day %1</source>
        <translation>día %1</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>bajo %1</translation>
    </message>
    <message>
        <source>a shade or microclimate factor from %1 to %2</source>
        <translation>un factor de sombra o microclima de %1 a %2</translation>
    </message>
    <message>
        <source>a day of the season from 1 on</source>
        <translation>un día de la temporada, de 1 en adelante</translation>
    </message>
    <message>
        <source>a negative stage</source>
        <translation>una fase negativa</translation>
    </message>
    <message>
        <source>stage lengths of 0 days or more</source>
        <translation>fases de 0 días o más</translation>
    </message>
    <message>
        <source>shade or microclimate x %1</source>
        <translation>sombra o microclima × %1</translation>
    </message>
    <message>
        <source>Costello et al. (2000) for the microclimate factor</source>
        <translation>Costello et al. (2000) para el factor de microclima</translation>
    </message>
    <message>
        <source>mean of the days of %1</source>
        <translation>media de los días de %1</translation>
    </message>
    <message>
        <source>a month&apos;s rain from 0 to 200 in</source>
        <translation>una lluvia mensual de 0 a 200 in</translation>
    </message>
    <message>
        <source>a month&apos;s crop ET from 0 to 200 in</source>
        <translation>una ET mensual del cultivo de 0 a 200 in</translation>
    </message>
    <message>
        <source>a usable soil water storage from 0.75 to 7 in</source>
        <translation>un almacenamiento útil de agua en el suelo de 0.75 a 7 in</translation>
    </message>
    <message>
        <source>rain not counted</source>
        <translation>lluvia sin contar</translation>
    </message>
    <message>
        <source>%1 % of rain</source>
        <translation>%1 % de la lluvia</translation>
    </message>
    <message>
        <source>NRCS monthly, storage %1</source>
        <translation>NRCS mensual, almacenamiento %1</translation>
    </message>
    <message>
        <source>daily root-zone balance</source>
        <translation>balance diario de la zona radicular</translation>
    </message>
    <message>
        <source>rule chosen by the user or the program</source>
        <translation>regla elegida por el usuario o el programa</translation>
    </message>
    <message>
        <source>USDA-NRCS (1993) National Engineering Handbook part 623 chapter 2, 623.0207</source>
        <translation>USDA-NRCS (1993) National Engineering Handbook, parte 623, capítulo 2, 623.0207</translation>
    </message>
    <message>
        <source>FAO Irrigation and Drainage Paper 56 (1998), chapter 8</source>
        <translation>FAO, Estudio de riego y drenaje 56 (1998), capítulo 8</translation>
    </message>
    <message>
        <source>none, share:F, nrcs, nrcs:DEPTH or balance</source>
        <translation>none, share:F, nrcs, nrcs:DEPTH o balance</translation>
    </message>
    <message>
        <source>a longitude from -180 to 180 degrees</source>
        <translation>una longitud de -180 a 180 grados</translation>
    </message>
    <message>
        <source>a night clearness from 0.3 to 1</source>
        <translation>una claridad nocturna de 0.3 a 1</translation>
    </message>
    <message>
        <source>a period above zero and at most an hour</source>
        <translation>un período mayor que cero y de hasta una hora</translation>
    </message>
    <message>
        <source>periods in order of time that do not overlap</source>
        <translation>períodos en orden de tiempo que no se solapen</translation>
    </message>
    <message>
        <source>%1, summed by day</source>
        <translation>%1, sumada por día</translation>
    </message>
    <message>
        <source>a %1 factor from %2 to %3</source>
        <translation>un factor %1 de %2 a %3</translation>
    </message>
    <message>
        <source>monthly table %1</source>
        <translation>tabla mensual %1</translation>
    </message>
    <message>
        <source>a coefficient from 0 to 2 for area %1</source>
        <translation>un coeficiente de 0 a 2 para la zona %1</translation>
    </message>
    <message>
        <source>coefficient of the area&apos;s record</source>
        <translation>coeficiente del registro de la zona</translation>
    </message>
    <message>
        <source>the area&apos;s record</source>
        <translation>el registro de la zona</translation>
    </message>
    <message>
        <source>plant not recorded: cool-season turf assumed</source>
        <translation>planta no registrada: se supone césped de clima fresco</translation>
    </message>
    <message>
        <source>plant not in the data: cool-season turf assumed</source>
        <translation>planta que no está en los datos: se supone césped de clima fresco</translation>
    </message>
    <message>
        <source>landscape coefficient: species %1 x density %2 x microclimate %3</source>
        <translation>coeficiente de paisaje: especie %1 × densidad %2 × microclima %3</translation>
    </message>
    <message>
        <source>Costello, Matheny, Clark &amp; Jones (2000), landscape coefficient method</source>
        <translation>Costello, Matheny, Clark y Jones (2000), método del coeficiente de paisaje</translation>
    </message>
    <message>
        <source>%1 dS/m</source>
        <translation>%1 dS/m</translation>
    </message>
    <message>
        <source>a conductivity of the water from 0 to 60 dS/m (1 dS/m is 1000 uS/cm)</source>
        <translation>una conductividad del agua de 0 a 60 dS/m (1 dS/m son 1000 uS/cm)</translation>
    </message>
    <message>
        <source>a conductivity of the soil extract from 0 to 60 dS/m (1 dS/m is 1000 uS/cm)</source>
        <translation>una conductividad del extracto del suelo de 0 a 60 dS/m (1 dS/m son 1000 uS/cm)</translation>
    </message>
    <message>
        <source>water of %1 dS/m for a soil limit of %2 dS/m</source>
        <translation>agua de %1 dS/m para un límite del suelo de %2 dS/m</translation>
    </message>
    <message>
        <source>water below 2.5 times the limit: above it no amount of leaching is enough</source>
        <translation>agua por debajo de 2.5 veces el límite: por encima ningún lavado basta</translation>
    </message>
    <message>
        <source>a leaching fraction above 0: without leaching salt only grows</source>
        <translation>una fracción de lavado mayor que 0: sin lavado la sal solo aumenta</translation>
    </message>
    <message>
        <source>a yield response factor above 0</source>
        <translation>un factor de respuesta mayor que 0</translation>
    </message>
    <message>
        <source>leaching requirement</source>
        <translation>el requerimiento de lavado</translation>
    </message>
    <message>
        <source>tall surface with FAO-56</source>
        <translation>superficie alta con FAO-56</translation>
    </message>
    <message>
        <source>the short surface; a tall reference is defined by ASCE-EWRI 2005 only</source>
        <translation>la superficie baja; una referencia alta solo la define ASCE-EWRI 2005</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>hours incomplete: the station&apos;s daily record stands in</source>
        <translation>horas incompletas: las reemplaza el registro diario de la estación</translation>
    </message>
    <message>
        <source>hours incomplete, and no daily record: no ET</source>
        <translation>horas incompletas y sin registro diario: sin ET</translation>
    </message>
    <message>
        <source>no ET of %1: the others&apos; weights carry it</source>
        <translation>sin ET de %1: la llevan los pesos de las demás</translation>
    </message>
    <message>
        <source>no rain of %1: the others&apos; weights carry it</source>
        <translation>sin lluvia de %1: la llevan los pesos de las demás</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>%1, mixed by distance from %2</source>
        <translation>%1, mezclada por distancia de %2</translation>
    </message>
    <message>
        <source>no weather station</source>
        <translation>ninguna estación meteorológica</translation>
    </message>
    <message>
        <source>at least one</source>
        <translation>al menos una</translation>
    </message>
    <message>
        <source>a power of the distance above 0, at most 10; 2 is usual</source>
        <translation>una potencia de la distancia mayor que 0, de hasta 10; lo usual es 2</translation>
    </message>
    <message>
        <source>a distance of zero or more</source>
        <translation>una distancia de cero o más</translation>
    </message>
    <message>
        <source>sod, establishment, overseeding or shade</source>
        <translation>sod, establishment, overseeding o shade</translation>
    </message>
    <message>
        <source>a last day not before the first, %1</source>
        <translation>un último día no anterior al primero, %1</translation>
    </message>
    <message>
        <source>no key</source>
        <translation>ninguna clave</translation>
    </message>
    <message>
        <source>a key of establishment.csv, or a last day and a coefficient</source>
        <translation>una clave de establishment.csv, o un último día y un coeficiente</translation>
    </message>
    <message>
        <source>a coefficient from %1 to %2</source>
        <translation>un coeficiente de %1 a %2</translation>
    </message>
    <message>
        <source>no last day</source>
        <translation>ningún último día</translation>
    </message>
    <message>
        <source>the last day under the other plant</source>
        <translation>el último día bajo la otra planta</translation>
    </message>
    <message>
        <source>the key of a plant, such as perennial_ryegrass</source>
        <translation>la clave de una planta, como perennial_ryegrass</translation>
    </message>
    <message>
        <source>no coefficient</source>
        <translation>ningún coeficiente</translation>
    </message>
    <message>
        <source>the factor of the shade</source>
        <translation>el factor de la sombra</translation>
    </message>
    <message>
        <source>a factor from %1 to %2</source>
        <translation>un factor de %1 a %2</translation>
    </message>
    <message>
        <source>FAO Irrigation and Drainage Paper 56 (1998), Eq. 6</source>
        <translation>FAO, Estudio de riego y drenaje 56 (1998), ec. 6</translation>
    </message>
    <message>
        <source>Hargreaves &amp; Samani (1985) Applied Engineering in Agriculture 1(2):96-99; FAO-56 Eq. 52</source>
        <translation>Hargreaves y Samani (1985) Applied Engineering in Agriculture 1(2):96-99; FAO-56, ec. 52</translation>
    </message>
    <message>
        <source>ETo as recorded by the station</source>
        <translation>ETo tal como la registró la estación</translation>
    </message>
    <message>
        <source>the weather record</source>
        <translation>el registro del tiempo</translation>
    </message>
    <message>
        <source>FAO-56 Penman-Monteith daily</source>
        <translation>FAO-56 Penman-Monteith diaria</translation>
    </message>
    <message>
        <source>FAO-56 Penman-Monteith hourly</source>
        <translation>FAO-56 Penman-Monteith por horas</translation>
    </message>
    <message>
        <source>ASCE-EWRI 2005 daily, short surface</source>
        <translation>ASCE-EWRI 2005 diaria, superficie baja</translation>
    </message>
    <message>
        <source>ASCE-EWRI 2005 hourly, short surface</source>
        <translation>ASCE-EWRI 2005 por horas, superficie baja</translation>
    </message>
    <message>
        <source>ASCE-EWRI 2005 daily, tall surface</source>
        <translation>ASCE-EWRI 2005 diaria, superficie alta</translation>
    </message>
    <message>
        <source>ASCE-EWRI 2005 hourly, tall surface</source>
        <translation>ASCE-EWRI 2005 por horas, superficie alta</translation>
    </message>
    <message>
        <source>a latitude from -90 to 90 degrees</source>
        <translation>una latitud de -90 a 90 grados</translation>
    </message>
    <message>
        <source>an elevation from -450 to 9000 m</source>
        <translation>una altitud de -450 a 9000 m</translation>
    </message>
    <message>
        <source>an anemometer 0.5 to 100 m above grass</source>
        <translation>un anemómetro de 0.5 a 100 m sobre la hierba</translation>
    </message>
    <message>
        <source>one Angstrom coefficient</source>
        <translation>un solo coeficiente de Angstrom</translation>
    </message>
    <message>
        <source>both a and b, or neither</source>
        <translation>a y b, o ninguno de los dos</translation>
    </message>
    <message>
        <source>Angstrom a %1, b %2</source>
        <translation>Angstrom a %1, b %2</translation>
    </message>
    <message>
        <source>two coefficients not below 0 whose sum is above 0 and at most 1</source>
        <translation>dos coeficientes no menores que 0 cuya suma sea mayor que 0 y de hasta 1</translation>
    </message>
    <message>
        <source>an albedo from 0 to below 1</source>
        <translation>un albedo de 0 a menos de 1</translation>
    </message>
    <message>
        <source>a dew point 0 to 10 C below the minimum</source>
        <translation>un punto de rocío de 0 a 10 C por debajo de la mínima</translation>
    </message>
    <message>
        <source>%1 of %2 C is below any record.</source>
        <translation>%1 de %2 C está por debajo de todo registro.</translation>
    </message>
    <message>
        <source>%1 of %2 C is above any record: it may be in Fahrenheit.</source>
        <translation>%1 de %2 C está por encima de todo registro: puede estar en Fahrenheit.</translation>
    </message>
    <message>
        <source>A highest temperature</source>
        <translation>Una temperatura máxima</translation>
    </message>
    <message>
        <source>A lowest temperature</source>
        <translation>Una temperatura mínima</translation>
    </message>
    <message>
        <source>A mean temperature</source>
        <translation>Una temperatura media</translation>
    </message>
    <message>
        <source>A dew point</source>
        <translation>Un punto de rocío</translation>
    </message>
    <message>
        <source>A lowest temperature of %1 C is far above usual nights: it may be in Fahrenheit.</source>
        <translation>Una temperatura mínima de %1 C está muy por encima de las noches usuales: puede estar en Fahrenheit.</translation>
    </message>
    <message>
        <source>The lowest temperature, %1 C, is above the highest, %2 C.</source>
        <translation>La temperatura mínima, %1 C, está por encima de la máxima, %2 C.</translation>
    </message>
    <message>
        <source>The temperatures of the day lie %1 C apart.</source>
        <translation>Las temperaturas del día distan %1 C.</translation>
    </message>
    <message>
        <source>The mean temperature lies outside the lowest and the highest.</source>
        <translation>La temperatura media queda fuera de la mínima y la máxima.</translation>
    </message>
    <message>
        <source>The dew point, %1 C, is above the highest temperature, %2 C.</source>
        <translation>El punto de rocío, %1 C, está por encima de la temperatura máxima, %2 C.</translation>
    </message>
    <message>
        <source>The dew point, %1 C, is well above the lowest temperature, %2 C.</source>
        <translation>El punto de rocío, %1 C, está bastante por encima de la temperatura mínima, %2 C.</translation>
    </message>
    <message>
        <source>%1 of %2 % cannot be.</source>
        <translation>%1 del %2 % no puede ser.</translation>
    </message>
    <message>
        <source>%1 of %2 % counts as 100 %: the sensor reads high.</source>
        <translation>%1 del %2 % cuenta como 100 %: el sensor marca de más.</translation>
    </message>
    <message>
        <source>A highest humidity</source>
        <translation>Una humedad máxima</translation>
    </message>
    <message>
        <source>A lowest humidity</source>
        <translation>Una humedad mínima</translation>
    </message>
    <message>
        <source>A mean humidity</source>
        <translation>Una humedad media</translation>
    </message>
    <message>
        <source>The lowest humidity is above the highest.</source>
        <translation>La humedad mínima está por encima de la máxima.</translation>
    </message>
    <message>
        <source>A lowest humidity of %1 % is rare even in arid places.</source>
        <translation>Una humedad mínima del %1 % es rara incluso en lugares áridos.</translation>
    </message>
    <message>
        <source>A mean humidity of %1 % is low for irrigated ground.</source>
        <translation>Una humedad media del %1 % es baja para un terreno regado.</translation>
    </message>
    <message>
        <source>Sunshine of %1 h on a day of %2 h.</source>
        <translation>Insolación de %1 h en un día de %2 h.</translation>
    </message>
    <message>
        <source>Radiation of %1 MJ/m2 is below zero.</source>
        <translation>Una radiación de %1 MJ/m2 es menor que cero.</translation>
    </message>
    <message>
        <source>Radiation of %1 MJ/m2 is more than arrives outside the atmosphere, %2: look at its unit and at the latitude.</source>
        <translation>Una radiación de %1 MJ/m2 es más de la que llega fuera de la atmósfera, %2: revise su unidad y la latitud.</translation>
    </message>
    <message>
        <source>Radiation of %1 MJ/m2 is above a clear sky, %2.</source>
        <translation>Una radiación de %1 MJ/m2 supera la de un cielo despejado, %2.</translation>
    </message>
    <message>
        <source>Radiation of %1 MJ/m2 is less than the darkest overcast lets through.</source>
        <translation>Una radiación de %1 MJ/m2 es menos de la que deja pasar el cielo más cubierto.</translation>
    </message>
    <message>
        <source>A mean wind of %1 m/s is below zero.</source>
        <translation>Un viento medio de %1 m/s es menor que cero.</translation>
    </message>
    <message>
        <source>A mean wind of %1 m/s is above any record.</source>
        <translation>Un viento medio de %1 m/s está por encima de todo registro.</translation>
    </message>
    <message>
        <source>A mean wind of %1 m/s is a storm all day.</source>
        <translation>Un viento medio de %1 m/s es un temporal todo el día.</translation>
    </message>
    <message>
        <source>Rain of %1 mm is below zero.</source>
        <translation>Una lluvia de %1 mm es menor que cero.</translation>
    </message>
    <message>
        <source>Rain of %1 mm is above any record.</source>
        <translation>Una lluvia de %1 mm está por encima de todo registro.</translation>
    </message>
    <message>
        <source>Rain of %1 mm in a day is rare: look at its unit.</source>
        <translation>Una lluvia de %1 mm en un día es rara: revise su unidad.</translation>
    </message>
    <message>
        <source>A recorded ETo of %1 mm: look at its unit.</source>
        <translation>Una ETo registrada de %1 mm: revise su unidad.</translation>
    </message>
    <message>
        <source>by definition</source>
        <translation>por definición</translation>
    </message>
    <message>
        <source>The same %1 to the last digit, %2, on %3 days in a row.</source>
        <translation>El mismo valor de %1 hasta la última cifra, %2, en %3 días seguidos.</translation>
    </message>
    <message>
        <source>tmax</source>
        <translation>tmax</translation>
    </message>
    <message>
        <source>tmin</source>
        <translation>tmin</translation>
    </message>
    <message>
        <source>tdew</source>
        <translation>tdew</translation>
    </message>
    <message>
        <source>rhmax</source>
        <translation>rhmax</translation>
    </message>
    <message>
        <source>rhmin</source>
        <translation>rhmin</translation>
    </message>
    <message>
        <source>radiation</source>
        <translation>radiación</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>viento</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>lluvia</translation>
    </message>
    <message>
        <source>Wind below %1 m/s on %2 days in a row: a worn bearing or an offset?</source>
        <translation>Viento por debajo de %1 m/s en %2 días seguidos: ¿un rodamiento gastado o un desajuste?</translation>
    </message>
    <message>
        <source>In %1 days radiation came to no more than %2 % of a clear sky: the sensor may read low or be dirty.</source>
        <translation>En %1 días la radiación no pasó del %2 % de un cielo despejado: el sensor puede marcar de menos o estar sucio.</translation>
    </message>
    <message>
        <source>The highest temperatures average %1 C: they look like Fahrenheit.</source>
        <translation>Las temperaturas máximas promedian %1 C: parecen Fahrenheit.</translation>
    </message>
    <message>
        <source>The highest humidity never passed %1 %: the sensor may read low, or the station stands on dry ground.</source>
        <translation>La humedad máxima nunca pasó del %1 %: el sensor puede marcar de menos, o la estación está sobre terreno seco.</translation>
    </message>
    <message>
        <source>The day %1 comes twice.</source>
        <translation>El día %1 aparece dos veces.</translation>
    </message>
    <message>
        <source>No record from %1 to %2.</source>
        <translation>Sin registro del %1 al %2.</translation>
    </message>
    <message>
        <source>a temperature unit, c or f</source>
        <translation>una unidad de temperatura, c o f</translation>
    </message>
</context>
<context>
    <name>workflow</name>
    <message>
        <source>an instant such as 2024-06-30T12:00:00Z</source>
        <translation>un momento como 2024-06-30T12:00:00Z</translation>
    </message>
    <message>
        <source>the number of an application in the book</source>
        <translation>el número de una solicitud del libro</translation>
    </message>
    <message>
        <source>filing %1 of application %2</source>
        <translation>expediente %1 de la solicitud %2</translation>
    </message>
    <message>
        <source>a filing that belongs to no application</source>
        <translation>un expediente que no pertenezca a ninguna solicitud</translation>
    </message>
    <message>
        <source>filing %1 of site %2</source>
        <translation>expediente %1 del sitio %2</translation>
    </message>
    <message>
        <source>a filing of the application&apos;s site, %1</source>
        <translation>un expediente del sitio de la solicitud, %1</translation>
    </message>
    <message>
        <source>a day that is not after %1</source>
        <translation>un día que no sea posterior al %1</translation>
    </message>
    <message>
        <source>an application opened by nobody</source>
        <translation>una solicitud que nadie abre</translation>
    </message>
    <message>
        <source>the name of whoever opens it</source>
        <translation>el nombre de quien la abre</translation>
    </message>
    <message>
        <source>an application without a number</source>
        <translation>una solicitud sin número</translation>
    </message>
    <message>
        <source>its number, in one line</source>
        <translation>su número, en una línea</translation>
    </message>
    <message>
        <source>a number that no application in the book has</source>
        <translation>un número que no tenga ninguna solicitud del libro</translation>
    </message>
    <message>
        <source>an application of nobody</source>
        <translation>una solicitud de nadie</translation>
    </message>
    <message>
        <source>the name of the applicant</source>
        <translation>el nombre del solicitante</translation>
    </message>
    <message>
        <source>an application without a site</source>
        <translation>una solicitud sin sitio</translation>
    </message>
    <message>
        <source>the code of the site</source>
        <translation>el código del sitio</translation>
    </message>
    <message>
        <source>a filing moved by nobody</source>
        <translation>un expediente que nadie mueve</translation>
    </message>
    <message>
        <source>the name of whoever does it</source>
        <translation>el nombre de quien lo hace</translation>
    </message>
    <message>
        <source>application %1, which is decided</source>
        <translation>solicitud %1, que ya está decidida</translation>
    </message>
    <message>
        <source>an application that waits for a decision</source>
        <translation>una solicitud que espere una decisión</translation>
    </message>
    <message>
        <source>filing %1</source>
        <translation>expediente %1</translation>
    </message>
    <message>
        <source>a filing of application %1</source>
        <translation>un expediente de la solicitud %1</translation>
    </message>
    <message>
        <source>the code of a plan in the book</source>
        <translation>el código de un plano del libro</translation>
    </message>
    <message>
        <source>the code of a plan in the book, or a plan file</source>
        <translation>el código de un plano del libro, o un archivo de plano</translation>
    </message>
    <message>
        <source>%1 tests in %2</source>
        <translation>%1 pruebas en %2</translation>
    </message>
    <message>
        <source>one of the tests %1</source>
        <translation>una de las pruebas %1</translation>
    </message>
    <message>
        <source>no filing</source>
        <translation>ningún expediente</translation>
    </message>
    <message>
        <source>a zip file or a folder with some</source>
        <translation>un archivo zip o una carpeta con alguno</translation>
    </message>
    <message>
        <source>the program that application %1 is for, %2</source>
        <translation>el programa al que se dirige la solicitud %1, %2</translation>
    </message>
    <message>
        <source>application %1</source>
        <translation>solicitud %1</translation>
    </message>
    <message>
        <source>one that can be worked out: %1</source>
        <translation>una que se pueda calcular: %1</translation>
    </message>
    <message>
        <source>the SHA-256 of the filing: several in the book have that code</source>
        <translation>el SHA-256 del expediente: varios del libro tienen ese código</translation>
    </message>
    <message>
        <source>the code or SHA-256 of a filing in the book</source>
        <translation>el código o el SHA-256 de un expediente del libro</translation>
    </message>
    <message>
        <source>There is no filing %1 in the book.</source>
        <translation>No hay ningún expediente %1 en el libro.</translation>
    </message>
    <message>
        <source>application %1 without a filing</source>
        <translation>solicitud %1 sin expediente</translation>
    </message>
    <message>
        <source>a filing of the applicant</source>
        <translation>un expediente del solicitante</translation>
    </message>
    <message>
        <source>Its filings contradict each other, so the newest stands alone: %1</source>
        <translation>Sus expedientes se contradicen, así que el más reciente queda solo: %1</translation>
    </message>
    <message>
        <source>It names no program, so only figures are checked.</source>
        <translation>No nombra ningún programa, así que solo se comprueban las cifras.</translation>
    </message>
    <message>
        <source>The program %1 is not known here, so only figures are checked.</source>
        <translation>El programa %1 no se conoce aquí, así que solo se comprueban las cifras.</translation>
    </message>
    <message>
        <source>a decision without a reason</source>
        <translation>una decisión sin motivo</translation>
    </message>
    <message>
        <source>the reason, for the applicant and the journal</source>
        <translation>el motivo, para el solicitante y el diario</translation>
    </message>
    <message>
        <source>a decision by nobody</source>
        <translation>una decisión de nadie</translation>
    </message>
    <message>
        <source>the name of whoever decides</source>
        <translation>el nombre de quien decide</translation>
    </message>
    <message>
        <source>an amount</source>
        <translation>un importe</translation>
    </message>
    <message>
        <source>a decision about money without an amount</source>
        <translation>una decisión sobre dinero sin importe</translation>
    </message>
    <message>
        <source>an amount with an approval or a payment, and only there</source>
        <translation>un importe con una aprobación o un pago, y solo ahí</translation>
    </message>
    <message>
        <source>an amount of money, not below zero</source>
        <translation>un importe de dinero, no menor que cero</translation>
    </message>
    <message>
        <source>the SHA-256 of a filing in the book</source>
        <translation>el SHA-256 de un expediente del libro</translation>
    </message>
    <message>
        <source>There is no application %1 in the book.</source>
        <translation>No hay ninguna solicitud %1 en el libro.</translation>
    </message>
    <message>
        <source>Application %1 is %2; it cannot be made %3.</source>
        <translation>La solicitud %1 está %2; no puede pasar a %3.</translation>
    </message>
    <message>
        <source>The book %1 was not made by the demo; give the demo another folder.</source>
        <translation>El libro %1 no lo creó la demostración; dé otra carpeta a la demostración.</translation>
    </message>
    <message>
        <source>could not write %1</source>
        <translation>no se pudo escribir %1</translation>
    </message>
    <message>
        <source>could not write the column map: %1</source>
        <translation>no se pudo escribir el mapa de columnas: %1</translation>
    </message>
    <message>
        <source>no folder</source>
        <translation>ninguna carpeta</translation>
    </message>
    <message>
        <source>the name of a folder to make</source>
        <translation>el nombre de una carpeta que crear</translation>
    </message>
    <message>
        <source>a folder that is not there yet or is empty; nothing is overwritten</source>
        <translation>una carpeta que todavía no exista o esté vacía; no se sobrescribe nada</translation>
    </message>
    <message>
        <source>cannot write %1</source>
        <translation>no se puede escribir %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>months in order, the first one first</source>
        <translation>meses en orden, el primero delante</translation>
    </message>
    <message>
        <source>An area of the book has an outline that cannot be read.</source>
        <translation>Una zona del libro tiene un contorno que no se puede leer.</translation>
    </message>
    <message>
        <source>the code of a site in the book</source>
        <translation>el código de un sitio del libro</translation>
    </message>
    <message>
        <source>the code of a catch test in the book</source>
        <translation>el código de una prueba de captación del libro</translation>
    </message>
    <message>
        <source>test %1 of an area that is not in the book</source>
        <translation>la prueba %1 de una zona que no está en el libro</translation>
    </message>
    <message>
        <source>a sound book</source>
        <translation>un libro íntegro</translation>
    </message>
    <message>
        <source>tests of the sites %1 and %2</source>
        <translation>pruebas de los sitios %1 y %2</translation>
    </message>
    <message>
        <source>tests of one site in a filing</source>
        <translation>pruebas de un solo sitio en un expediente</translation>
    </message>
    <message>
        <source>a file that can be read</source>
        <translation>un archivo que se pueda leer</translation>
    </message>
    <message>
        <source>a file of at most 16 MiB</source>
        <translation>un archivo de 16 MiB como máximo</translation>
    </message>
    <message>
        <source>a filing of nothing</source>
        <translation>un expediente de nada</translation>
    </message>
    <message>
        <source>a site or a catch test</source>
        <translation>un sitio o una prueba de captación</translation>
    </message>
    <message>
        <source>%1, changed while it was written</source>
        <translation>%1, cambiado mientras se escribía</translation>
    </message>
    <message>
        <source>attachments that stand still</source>
        <translation>adjuntos que no cambien</translation>
    </message>
    <message>
        <source>no pipe: %1</source>
        <translation>no hay conducto: %1</translation>
    </message>
    <message>
        <source>cannot run %1: %2</source>
        <translation>no se puede ejecutar %1: %2</translation>
    </message>
    <message>
        <source>cannot tell where this program lies: %1</source>
        <translation>no se puede saber dónde está este programa: %1</translation>
    </message>
    <message>
        <source>PDF, PNG and SVG are drawn by evenfall-print, which is not at %1; install it beside this program</source>
        <translation>PDF, PNG y SVG los dibuja evenfall-print, que no está en %1; instálelo junto a este programa</translation>
    </message>
    <message>
        <source>evenfall-print was ended by signal %1</source>
        <translation>evenfall-print terminó por la señal %1</translation>
    </message>
    <message>
        <source>evenfall-print could not draw %1, exit status %2</source>
        <translation>evenfall-print no pudo dibujar %1, estado de salida %2</translation>
    </message>
    <message>
        <source>%1 could not be written</source>
        <translation>%1 no se pudo escribir</translation>
    </message>
    <message>
        <source>one of xlsx, pdf, csv, txt, json, png, svg</source>
        <translation>uno de xlsx, pdf, csv, txt, json, png, svg</translation>
    </message>
    <message>
        <source>letter or a4</source>
        <translation>letter (carta) o a4</translation>
    </message>
    <message>
        <source>a catch test in the book</source>
        <translation>una prueba de captación del libro</translation>
    </message>
    <message>
        <source>a site in the book</source>
        <translation>un sitio del libro</translation>
    </message>
    <message>
        <source>net rate of catch test %1</source>
        <translation>tasa neta de la prueba de captación %1</translation>
    </message>
    <message>
        <source>a time such as 22:00</source>
        <translation>una hora como 22:00</translation>
    </message>
    <message>
        <source>days such as mon,wed,fri</source>
        <translation>días como mon,wed,fri</translation>
    </message>
    <message>
        <source>a window such as 22:00-06:00</source>
        <translation>un horario como 22:00-06:00</translation>
    </message>
    <message>
        <source>a window that ends after it starts</source>
        <translation>un horario que termine después de empezar</translation>
    </message>
    <message>
        <source>no month from %1 to %2 with a known need at site %3</source>
        <translation>ningún mes de %1 a %2 con necesidad conocida en el sitio %3</translation>
    </message>
    <message>
        <source>weather of the site for at least one month</source>
        <translation>el tiempo del sitio durante al menos un mes</translation>
    </message>
    <message>
        <source>a site in the book; it has none yet</source>
        <translation>un sitio del libro; aún no tiene ninguno</translation>
    </message>
    <message>
        <source>a site in the book, one of %1</source>
        <translation>un sitio del libro, uno de: %1</translation>
    </message>
    <message>
        <source>Not used.</source>
        <translation>No se usó.</translation>
    </message>
    <message>
        <source>Limit: %1.</source>
        <translation>Límite: %1.</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>tiempo</translation>
    </message>
    <message>
        <source>a program file that can be read</source>
        <translation>un archivo de programa que se pueda leer</translation>
    </message>
    <message>
        <source>a program file of at most 1 MiB</source>
        <translation>un archivo de programa de hasta 1 MiB</translation>
    </message>
    <message>
        <source>Shepard (1968) A two-dimensional interpolation function for irregularly-spaced data, 23rd ACM National Conference [memory]; common practice between weather stations</source>
        <translation>Shepard (1968) A two-dimensional interpolation function for irregularly-spaced data, 23rd ACM National Conference [de memoria]; práctica común entre estaciones meteorológicas</translation>
    </message>
    <message>
        <source>no elevation for site %1</source>
        <translation>ninguna altitud para el sitio %1</translation>
    </message>
    <message>
        <source>the elevation of the site or of its weather station; air pressure follows from it</source>
        <translation>la altitud del sitio o de su estación meteorológica; de ella sale la presión del aire</translation>
    </message>
    <message>
        <source>hourly weather of station %1 without its longitude</source>
        <translation>tiempo por horas de la estación %1 sin su longitud</translation>
    </message>
    <message>
        <source>the longitude of the station or of site %1; the angle of the sun follows from it</source>
        <translation>la longitud de la estación o del sitio %1; de ella sale el ángulo del sol</translation>
    </message>
    <message>
        <source>%1: reference ET and rain from its hours, summed by the site&apos;s day; a day that the hours do not cover takes the station&apos;s daily record</source>
        <translation>%1: ET de referencia y lluvia de sus horas, sumadas por el día del sitio; un día que las horas no cubren toma el registro diario de la estación</translation>
    </message>
    <message>
        <source>FAO-56 Eq. 53 and chapter 4; ASCE-EWRI 2005</source>
        <translation>FAO-56, ec. 53 y capítulo 4; ASCE-EWRI 2005</translation>
    </message>
    <message>
        <source>weather station %1, which site %2 mixes with others</source>
        <translation>la estación meteorológica %1, que el sitio %2 mezcla con otras</translation>
    </message>
    <message>
        <source>a weather station in the book</source>
        <translation>una estación meteorológica del libro</translation>
    </message>
    <message>
        <source>weather station %1 without longitude</source>
        <translation>estación meteorológica %1 sin longitud</translation>
    </message>
    <message>
        <source>weather station %1 without latitude</source>
        <translation>estación meteorológica %1 sin latitud</translation>
    </message>
    <message>
        <source>latitude and longitude of every station that site %1 mixes by distance</source>
        <translation>latitud y longitud de cada estación que el sitio %1 mezcla por distancia</translation>
    </message>
    <message>
        <source>site %1 without longitude</source>
        <translation>sitio %1 sin longitud</translation>
    </message>
    <message>
        <source>its longitude: it mixes weather stations by distance</source>
        <translation>su longitud: mezcla estaciones meteorológicas por distancia</translation>
    </message>
    <message>
        <source>elevation %1</source>
        <translation>altitud %1</translation>
    </message>
    <message>
        <source>the site&apos;s elevation taken</source>
        <translation>se toma la altitud del sitio</translation>
    </message>
    <message>
        <source>%1 at %2 (%3 %, %4)</source>
        <translation>%1 a %2 (%3 %, %4)</translation>
    </message>
    <message>
        <source>mixed by inverse distance to the power %1: </source>
        <translation>mezcladas por la inversa de la distancia a la potencia %1: </translation>
    </message>
    <message>
        <source>mixed by inverse distance to the power %1 (usual): </source>
        <translation>mezcladas por la inversa de la distancia a la potencia %1 (usual): </translation>
    </message>
    <message>
        <source>no recorded elevation</source>
        <translation>altitud no registrada</translation>
    </message>
    <message>
        <source>; site at %1, nothing is corrected for height; each station&apos;s ET by its own record, ET and rain mixed each by itself, a station&apos;s gap carried by the others&apos; weights</source>
        <translation>; sitio a %1, nada se corrige por altura; la ET de cada estación por su propio registro, ET y lluvia mezcladas cada una por su lado, el hueco de una estación lo llevan los pesos de las demás</translation>
    </message>
    <message>
        <source>catch test %1</source>
        <translation>prueba de captación %1</translation>
    </message>
    <message>
        <source>Not used, because it cannot be worked out: %1.</source>
        <translation>No se usó, porque no se puede calcular: %1.</translation>
    </message>
</context>
</TS>
