// SPDX-License-Identifier: GPL-3.0-or-later
// Commands on a book, and the whole command line.
#include "app/cli/arguments.h"

#include "app/cli/option_parts.h"

#include <sstream>

namespace evenfall::cli {
namespace {

void add_demo(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<DemoOptions>(
        app, result, "demo", "Invent two organisations, build their book and write every report");
    cmd->add_option("--out", o->out, "Folder to write to; made when missing")->required();
    cmd->add_option("--format", o->formats, "xlsx, pdf, csv, separated by commas")
        ->delimiter(',')->check(CLI::IsMember({"xlsx", "pdf", "csv"}));
    add_json(cmd, o->json);
}

void add_new(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<NewOptions>(app, result, "new", "Make an empty record book");
    add_book(cmd, o->book);
}

void add_import(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<ImportOptions>(
        app, result, "import", "Add records from files; all of them or, on any error, none");
    add_book(cmd, o->book);
    cmd->add_option("files", o->files, "Tables to read, in this order")->required();
    cmd->add_option("--as", o->kind, "Kind of table, when its header leaves a doubt");
    cmd->add_option("--map", o->map, "JSON file that names columns, units and date order");
    cmd->add_option("--rejects", o->rejects, "Write refused rows with their reasons to this file");
    cmd->add_flag("--dry-run", o->dry_run, "Say what would happen and change nothing");
    cmd->add_flag("--accept-rest", o->accept_rest, "Store the good rows though some are refused");
    cmd->add_option("--conflicts", o->conflicts,
                    "A stored value that the file contradicts: refuse, keep or replace; both stay in the journal")
        ->check(CLI::IsMember({"refuse", "keep", "replace"}))->capture_default_str();
    cmd->add_option("--list-conflicts", o->list_conflicts,
                    "Write each such value to this table, to be filled in: book or file in its column choice");
    cmd->add_option("--choices", o->choices, "The table filled in; what it leaves open falls to --conflicts");
    cmd->add_option("--by", o->who, "Who does this, for the journal");
    add_json(cmd, o->json);
}

void add_season(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<SeasonOptions>(
        app, result, "season", "Use, budget and waste of one site, month by month");
    add_book(cmd, o->book);
    cmd->add_option("--site", o->site, "Code of the site")->required();
    cmd->add_option("--area", o->area, "Only this area");
    add_month(cmd, "--from", o->from, "First month")->required();
    add_month(cmd, "--to", o->to, "Last month")->required();
    add_rules(cmd, o->program, o->rain);
    add_quarter_rule(cmd, o->quarter_rule);
    add_json(cmd, o->json);
}

void add_portfolio(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<PortfolioOptions>(app, result, "portfolio", "Every site of a book, ranked");
    add_book(cmd, o->book);
    add_month(cmd, "--from", o->from, "First month")->required();
    add_month(cmd, "--to", o->to, "Last month")->required();
    add_rules(cmd, o->program, o->rain);
    cmd->add_option("--order", o->order, "What to rank by")
        ->check(CLI::IsMember({"over-budget", "per-acre", "money"}))->capture_default_str();
    add_json(cmd, o->json);
}

void add_schedule(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<ScheduleOptions>(
        app, result, "schedule", "Base schedule: minutes per station and week, month by month");
    add_book(cmd, o->book);
    cmd->add_option("--site", o->site, "Code of the site")->required();
    add_month(cmd, "--from", o->from, "First month of the weather it is made from")->required();
    add_month(cmd, "--to", o->to, "Last month of it")->required();
    add_rules(cmd, o->program, o->rain);
    cmd->add_option("--year", o->year, "Year it is for; the one after --to when left out")
        ->check(CLI::Range(calendar::first_year, calendar::last_year));
    auto* days = cmd->add_option("--days", o->days,
                                 "Allowed days such as mon,wed,fri, in place of the book's watering rule");
    auto* window = cmd->add_option("--window", o->window, "Water window such as 22:00-06:00");
    days->needs(window);
    window->needs(days);
    cmd->add_option("--at-once", o->at_once, "Stations that run at the same time")
        ->check(CLI::Range(1, 1000))->needs(days)->capture_default_str();
    cmd->add_option("--calendar", o->calendar, "Write a calendar (iCalendar) to this file");
    cmd->add_option("--csv", o->csv, "Write the table to this file");
    add_json(cmd, o->json);
}

void add_report(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<ReportOptions>(app, result, "report", "Write a report as xlsx, PDF or CSV");
    add_book(cmd, o->book);
    cmd->add_option("kind", o->kind, "Which report")
        ->required()->check(CLI::IsMember({"audit", "season", "portfolio", "plan", "review"}));
    cmd->add_option("--site", o->site, "Code of the site");
    cmd->add_option("--area", o->area, "Only this area");
    cmd->add_option("--test", o->test, "Code of the catch test");
    cmd->add_option("--plan", o->plan, "Code of the plan, or a plan file");
    cmd->add_option("--application", o->application, "Review: number of the application");
    cmd->add_option("--filing", o->filing, "Review: code or SHA-256 of one filing in the book");
    add_month(cmd, "--from", o->from, "First month");
    add_month(cmd, "--to", o->to, "Last month");
    add_rules(cmd, o->program, o->rain);
    add_quarter_rule(cmd, o->quarter_rule);
    cmd->add_option("--format", o->formats, "xlsx, pdf, csv, separated by commas")
        ->delimiter(',')->check(CLI::IsMember({"xlsx", "pdf", "csv"}));
    cmd->add_option("--paper", o->paper, "Paper of the PDF")
        ->check(CLI::IsMember({"letter", "a4"}))->capture_default_str();
    cmd->add_option("--units", o->system, "Units shown")
        ->check(CLI::IsMember({"us", "metric"}))->capture_default_str();
    cmd->add_option("--signer", o->signer, "Name for the signature block");
    cmd->add_option("--certification", o->certification, "Certification number of the signer");
    cmd->add_option("--certification-expires", o->certification_expires, "As on the certificate");
    cmd->add_option("--out", o->out, "Folder to write to")->capture_default_str();
    add_json(cmd, o->json);
}

void add_export(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<ExportOptions>(
        app, result, "export", "Write the whole book as tables that import reads back");
    add_book(cmd, o->book);
    cmd->add_option("--out", o->out, "Folder to make; nothing is overwritten")->required();
    auto* map = cmd->add_flag("--areas-geojson", o->areas_geojson, "Also areas.geojson: areas with their results, for a map");
    auto* from = add_month(cmd, "--from", o->from, "First month of the use, need and budget on the map");
    auto* to = add_month(cmd, "--to", o->to, "Last month of them");
    from->needs(map)->needs(to);
    to->needs(from);
    add_rules(cmd, o->program, o->rain);
    add_quarter_rule(cmd, o->quarter_rule);
    add_json(cmd, o->json);
}

void add_check(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<CheckOptions>(
        app, result, "check", "Look a book over: integrity, gaps, impossible values");
    add_book(cmd, o->book);
    add_json(cmd, o->json);
}

void add_file(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<FileOptions>(
        app, result, "file", "Freeze a filing in the book and write it as one file that anyone can recompute");
    add_book(cmd, o->book);
    cmd->add_option("--site", o->site, "File a site: its areas, meters, readings, weather and tests");
    cmd->add_option("--test", o->tests, "Code of a catch test; may be given several times");
    cmd->add_option("--code", o->code, "Name of the filing; made of site or test and day when left out");
    cmd->add_option("--request", o->words, "JSON file: applicant, auditor, sector, devices, invoices, claims");
    cmd->add_option("--attach", o->attachments, "photo=FILE, invoice=FILE, report=FILE or other=FILE; may be given several times");
    cmd->add_option("--key", o->key, "The auditor's own Ed25519 private key (PEM), to sign with");
    cmd->add_option("--rain", o->rain, "Effective rain: nrcs, none or share:F")->capture_default_str();
    add_quarter_rule(cmd, o->quarter_rule);
    cmd->add_option("--by", o->who, "Who does this, for the journal");
    cmd->add_option("--out", o->out, "File to write, ending in .zip; must not be there yet")->required();
    add_json(cmd, o->json);
}

void add_review(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<ReviewOptions>(
        app, result, "review", "Verify filings, work their figures out again and judge them by a program");
    cmd->add_option("filings", o->files, "Filings, or folders of them")->required();
    cmd->add_option("--program", o->program, "Rebate program: a name that comes with Evenfall, or a JSON file");
    cmd->add_option("--book", o->book, "Keep filings and applications in this book; ask about what earlier ones share");
    cmd->add_flag("--together", o->together, "The filings are one case, such as before and after");
    cmd->add_option("--threads", o->threads, "How many filings at a time")->check(CLI::Range(1, 64))->capture_default_str();
    cmd->add_option("--by", o->who, "Who does this, for the journal");
    cmd->add_option("--out", o->out, "Write a memo and a letter for each filing to this folder");
    cmd->add_option("--format", o->formats, "Of the memo: xlsx, pdf, csv, separated by commas")
        ->delimiter(',')->check(CLI::IsMember({"xlsx", "pdf", "csv"}));
    cmd->add_option("--units", o->system, "Units shown")->check(CLI::IsMember({"us", "metric"}))->capture_default_str();
    add_json(cmd, o->json);
}

void add_application(CLI::App& app, Result& result) {
    auto [cmd, o] = add_command<ApplicationOptions>(
        app, result, "application", "Show rebate applications, open one, give it filings or change where it stands");
    add_book(cmd, o->book);
    cmd->add_option("application", o->code, "Its number; all of them when left out");
    auto* set = cmd->add_option("--set", o->status, "New status")
        ->check(CLI::IsMember({"received", "incomplete", "under review", "approved", "declined", "paid"}));
    cmd->add_option_function<double>("--amount", [amount = &o->amount](const double& v) { *amount = v; }, "Money, with approved and paid")
        ->check(CLI::NonNegativeNumber);
    auto* open = cmd->add_flag("--open", o->open, "Open an application of that number by hand")->excludes(set);
    cmd->add_option("--applicant", o->applicant, "With --open; as its filing says when left out")->needs(open);
    cmd->add_option("--site", o->site, "With --open: code of its site; as its filing says when left out")->needs(open);
    open->needs(cmd->add_option("--program", o->program, "With --open: rebate program, a name that comes with Evenfall or a JSON file")->needs(open));
    add_date(cmd, "--received", o->received, "With --open: the day it came in; today when left out")->needs(open);
    auto* add = cmd->add_option("--add-filing", o->filings, "Put filings of the book into it, by code or SHA-256")->excludes(set);
    cmd->add_option("--take-out", o->take_out, "Take filings out of it that do not belong there")
        ->excludes(set)->excludes(open)->excludes(add);
    cmd->add_option("--note", o->note, "A sentence for the history");
    cmd->add_option("--by", o->who, "Who does this, for the journal");
    add_json(cmd, o->json);
}

}  // namespace

std::variant<Invocation, Stop> parse_arguments(int argc, const char* const* argv) {
    Result result;
    CLI::App app{"Evenfall: record book and calculator for the water on large turf", "evenfall"};
    app.set_version_flag("--version", "evenfall " EVENFALL_VERSION);
    app.require_subcommand(1);
    app.get_formatter()->column_width(34);
    app.footer(
        "Quantities carry their unit: 16.61in2, 107cm2, 1208.5m, 20min, 2.0in.\n"
        "Exit status: 0 done; 1 the answer is no; 2 bad arguments; 3 bad input, nothing changed;\n"
        "4 the book cannot be used. \"evenfall COMMAND --help\" explains one command.");
    add_demo(app, result);
    add_new(app, result);
    add_import(app, result);
    add_uniformity(app, result);
    add_reference_et(app, result);
    add_effective_rain(app, result);
    add_overlap(app, result);
    add_layout(app, result);
    add_season(app, result);
    add_portfolio(app, result);
    add_schedule(app, result);
    add_report(app, result);
    add_export(app, result);
    add_check(app, result);
    add_file(app, result);
    add_review(app, result);
    add_application(app, result);
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& e) {
        std::ostringstream out;
        std::ostringstream err;
        const int status = app.exit(e, out, err);
        return status == 0 ? Stop{0, out.str()} : Stop{2, out.str() + err.str()};
    }
    return *std::move(result);
}

}  // namespace evenfall::cli
