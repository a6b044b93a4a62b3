-- What a person does in Neovim 0.7 with a procedure that is not safe, and what they see. It opens the file, waits for the
-- findings, asks for a hover and for the hints, takes the preferred fix, waits until the errors are gone, and writes
-- what it saw as JSON. Paths come in the environment.

local file = vim.env.OHMWRIGHT_FILE
local report = { messages = {} }

local function write_and_quit(status)
  vim.fn.writefile({ vim.json.encode(report) }, vim.env.OHMWRIGHT_REPORT)
  vim.cmd(status .. 'cquit!')
end

local function wait_for(what, seen)
  if not vim.wait(30000, seen, 20) then
    error('not seen: ' .. what)
  end
end

local function session()
  vim.cmd('edit ' .. vim.fn.fnameescape(file))
  local buffer = vim.api.nvim_get_current_buf()
  local published, attached, exit_code

  local client_id = vim.lsp.start_client({
    name = 'ohmwright',
    cmd = { vim.env.OHMWRIGHT_NODE, vim.env.OHMWRIGHT_PROGRAM, 'serve', '--stdio' },
    root_dir = vim.fn.fnamemodify(file, ':h'),
    get_language_id = function()
      return 'ohmwright-procedure'
    end,
    handlers = {
      ['textDocument/publishDiagnostics'] = function(problem, result, context, config)
        published = result
        vim.lsp.diagnostic.on_publish_diagnostics(problem, result, context, config)
      end,
      ['window/showMessage'] = function(_, result)
        table.insert(report.messages, result.message)
      end,
    },
    on_attach = function()
      attached = true
    end,
    on_exit = function(code)
      exit_code = code
    end,
  })
  vim.lsp.buf_attach_client(buffer, client_id)
  wait_for('the server is attached', function()
    return attached
  end)
  local client = vim.lsp.get_client_by_id(client_id)
  report.server = client.server_info and client.server_info.name

  local function errors()
    return vim.diagnostic.get(buffer, { severity = vim.diagnostic.severity.ERROR })
  end
  local function ask(method, params)
    params.textDocument = vim.lsp.util.make_text_document_params(buffer)
    local answer = client.request_sync(method, params, 10000, buffer)
    if answer == nil or answer.err then
      error(method .. ': ' .. vim.inspect(answer))
    end
    return answer.result
  end

  wait_for('findings', function()
    return published and #errors() > 0
  end)
  report.findings = vim.tbl_map(function(found)
    return {
      line = found.lnum,
      column = found.col,
      lastLine = found.end_lnum,
      lastColumn = found.end_col,
      rule = found.user_data and found.user_data.lsp and found.user_data.lsp.code,
      severity = found.severity,
      message = found.message,
    }
  end, vim.diagnostic.get(buffer))

  local reading = vim.fn.search('^  - read: ', 'nw') - 1
  local hover = ask('textDocument/hover', { position = { line = reading, character = 12 } })
  report.hover = { line = reading, text = hover and hover.contents.value }
  report.hints = ask('textDocument/inlayHint', {
    range = {
      start = { line = 0, character = 0 },
      ['end'] = { line = vim.api.nvim_buf_line_count(buffer), character = 0 },
    },
  })

  local unsafe = vim.tbl_filter(function(found)
    return found.code == 'live-touch'
  end, published.diagnostics)
  local actions = ask('textDocument/codeAction', {
    range = unsafe[1].range,
    context = { diagnostics = unsafe },
  })
  local fix = vim.tbl_filter(function(action)
    return action.isPreferred
  end, actions)[1] or actions[1]
  report.fix = fix.title
  vim.lsp.util.apply_workspace_edit(fix.edit, client.offset_encoding)
  wait_for('no error after the fix', function()
    return #errors() == 0
  end)
  report.text = vim.api.nvim_buf_get_lines(buffer, 0, -1, true)

  client.stop()
  wait_for('the server ends', function()
    return exit_code ~= nil
  end)
  report.exitCode = exit_code
end

local worked, problem = pcall(session)
if not worked then
  report.problem = tostring(problem)
end
write_and_quit(worked and 0 or 1)
